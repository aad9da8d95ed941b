import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { circuitFrom, circuitToJSON, withValue, type Circuit } from '../../../src/engine/circuit/index.ts';
import { formatCircuit } from '../../../src/engine/notation/format/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { checkRules } from '../../../src/engine/rules/index.ts';
import { describeCircuit, drawSchematic } from '../../../src/engine/schematic/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { seriesParallel } from '../../../src/engine/topology/index.ts';
import { sameCircuit } from '../notation/same-circuit.ts';
import { laws } from '../schematic/laws.ts';
import { circuitOf, titlesOf, workedExamples } from '../solve/reference.ts';
import { lines } from './lines.ts';

/** The circuit with its values in SI units, so that 750 kΩ is 750000 Ω. */
const inUnits = (circuit: Circuit): Circuit => circuitFrom(circuitToJSON(circuit));

const entries = lines.map(([id, line]) => {
  const example = workedExamples.find((one) => one.id === id);
  assert.ok(example, id);
  return { id, line, example, circuit: parseCircuit(line), name: `${titlesOf(example)} (${id})` };
});

describe('a worked example as a line', () => {
  it('is written once for each of fifty or more', () => {
    assert.equal(new Set(lines.map(([id]) => id)).size, lines.length);
    assert.ok(lines.length >= 50);
  });

  for (const { id, name, line, circuit, example } of entries) {
    it(`is the circuit of ${name}`, () => {
      sameCircuit(inUnits(circuit), inUnits(circuitOf(example)), line);
      sameCircuit(parseCircuit(formatCircuit(circuit)), circuit, formatCircuit(circuit));
    });

    it(`has the answers of ${name}`, () => {
      const solution = solveExact(circuit);
      for (const { quantity, exact } of example.asked)
        assert.equal(solution.quantity(quantity)?.toFraction(), exact, quantity);
    });

    it(`has rules that balance in ${name}`, () => {
      const checks = checkRules(circuit);
      // A short circuit takes nothing at the terminals: there is no power to balance.
      const holds = checks.some(({ rule, status }) => rule === 'power balance' && status === 'holds');
      assert.equal(holds, id !== 'le-short-circuit');
      for (const { rule, within } of checks) assert.equal(within, 0, rule);
      const found = new Map(
        checks.flatMap(({ substituted }) => substituted?.sides.flat() ?? []).map((term) => [term.name, term]),
      );
      for (const { quantity, exact } of example.asked) {
        const term = found.get(quantity);
        if (!term || exact === null) continue;
        assert.equal(
          new Fraction(term.value).abs().toFraction(),
          new Fraction(exact).abs().toFraction(),
          quantity,
        );
      }
    });
  }
});

describe('the diagram of a worked example', () => {
  for (const { name, line, circuit } of entries) {
    const drawing = drawSchematic(circuit, { width: 640 });
    it(`is drawn lawfully just where it is series and parallel: ${name}`, () => {
      assert.equal(drawing.kind === 'irreducible', seriesParallel(circuit).kind === 'irreducible', line);
      if (drawing.kind !== 'irreducible') for (const { check } of laws) check(drawing, circuit);
    });

    it(`names every component in words: ${name}`, () => {
      const words = new Set(describeCircuit(circuit).match(/[A-Z]\w*/g));
      for (const { id } of circuit.components)
        assert.ok(words.has(id), `${id} in ${describeCircuit(circuit)}`);
    });

    it(`keeps a hidden value to itself, in words and drawn: ${name}`, () => {
      const hidden = parseCircuit(line.replace(/(\bR1 [^+∥;)]*?[ΩV])/, '$1 hidden'));
      const texts = (one: Circuit): readonly string[] => {
        const shown = drawSchematic(one, { width: 640 });
        return shown.kind === 'irreducible' ? [] : shown.labels.map(({ text }) => text);
      };
      if (!hidden.components.some((component) => component.id === 'R1' && component.hidden)) return;
      const other = withValue(hidden, 'R1', 7_654_321);
      assert.deepEqual(texts(other), texts(hidden));
      assert.equal(describeCircuit(other), describeCircuit(hidden));
    });
  }
});
