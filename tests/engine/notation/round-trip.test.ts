import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { circuitFrom, circuitToJSON, isPoint, type Circuit } from '../../../src/engine/circuit/index.ts';
import { formatCircuit } from '../../../src/engine/notation/format/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { Random } from './random.ts';
import { randomJSON } from './random-json.ts';
import { RandomLine } from './random-line.ts';
import { sameCircuit } from './same-circuit.ts';

const seeds = fc.integer();

/** Reads back what is written, and writes that once more: nothing may change. */
function roundTrip(circuit: Circuit, source: string): void {
  const written = formatCircuit(circuit);
  const read = parseCircuit(written);
  sameCircuit(read, circuit, `${source}\n${written}`);
  assert.equal(formatCircuit(read), written, source);
}

test('a circuit from a line is what is read back when it is written', () => {
  fc.assert(
    fc.property(seeds, fc.integer({ min: 1, max: 14 }), (seed, size) => {
      const { text } = new RandomLine(new Random(seed), size);
      roundTrip(parseCircuit(text), text);
    }),
    { numRuns: 2000 },
  );
});

test('a circuit from JSON is what is read back when it is written, bridges, dead ends and all', () => {
  fc.assert(
    fc.property(seeds, fc.integer({ min: 1, max: 12 }), (seed, size) => {
      const json = randomJSON(new Random(seed), size);
      roundTrip(circuitFrom(json), JSON.stringify(json));
    }),
    { numRuns: 2000 },
  );
});

test('a line and its JSON form are the same circuit, to the last digit', () => {
  fc.assert(
    fc.property(seeds, fc.integer({ min: 1, max: 10 }), (seed, size) => {
      const { text } = new RandomLine(new Random(seed), size);
      const json = circuitToJSON(parseCircuit(text));
      assert.deepEqual(circuitToJSON(circuitFrom(json)), json, text);
    }),
    { numRuns: 1000 },
  );
});

/** The circuit with labelled points in place of some of its nodes. */
function labelled(circuit: Circuit, random: Random): Circuit {
  const nodes = [...new Set(circuit.components.flatMap(({ from, to }) => [from, to]))];
  const names = new Map(nodes.map((node, i) => [node, random.once(2) ? `P${i}` : node]));
  const named = (node: string): string => names.get(node) ?? node;
  const [first, last] = circuit.terminals ?? [];
  return {
    ...circuit,
    components: circuit.components.map((each) => ({ ...each, from: named(each.from), to: named(each.to) })),
    ...(first && last && { terminals: [named(first), named(last)] }),
    ...(circuit.zero !== undefined && { zero: named(circuit.zero) }),
  };
}

test('labelled points are read back where they were, whether or not anything else names them', () => {
  const points = ({ components }: Circuit): string[] =>
    components.flatMap(({ id, from, to }) =>
      [`${id} from ${from}`, `${id} to ${to}`].filter((end) => isPoint(end.split(' ')[2] ?? '')),
    );
  fc.assert(
    fc.property(seeds, fc.integer({ min: 1, max: 12 }), (seed, size) => {
      const random = new Random(seed);
      const { text } = new RandomLine(random, size);
      for (const plain of [parseCircuit(text), circuitFrom(randomJSON(random, size))]) {
        const circuit = labelled(plain, random);
        roundTrip(circuit, text);
        const written = formatCircuit(circuit);
        assert.deepEqual(points(parseCircuit(written)).sort(), points(circuit).sort(), written);
      }
    }),
    { numRuns: 1500 },
  );
});
