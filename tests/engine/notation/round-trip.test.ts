import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { circuitFrom, circuitToJSON, type Circuit } from '../../../src/engine/circuit/index.ts';
import { formatCircuit, parseCircuit } from '../../../src/engine/notation/index.ts';
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
