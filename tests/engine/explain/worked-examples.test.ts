import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { explain, lessons, type Lesson } from '../../../src/engine/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { electrical } from '../../../src/engine/topology/index.ts';
import { usualCourse } from '../../../src/engine/words/index.ts';
import { circuitOf, titlesOf, workedExamples, type WorkedExample } from '../solve/reference.ts';
import { told } from './random-circuit.ts';
import { assertInOrder, assertNothingIdle, assertReplays, statedNames } from './replay.ts';
import { truthOf } from './truth.ts';

const suppliesOf = (example: WorkedExample): number =>
  example.circuit.components.filter(({ kind }) => kind === 'supply').length;

/** Series and parallel round one supply. */
const simple = workedExamples.filter(
  (example) => suppliesOf(example) < 2 && electrical(circuitOf(example)).bridge.length === 0,
);

describe('the derivation of a worked example', () => {
  it('is tried on all that are series and parallel round one supply', () => {
    assert.equal(simple.length, 58);
  });
  for (const example of simple) {
    const circuit = circuitOf(example);
    it(`reaches every exact answer of ${titlesOf(example)} (${example.id})`, () => {
      for (const { quantity, exact } of example.asked) {
        const derivation = explain(circuit, { find: quantity });
        assert.equal(derivation.status, 'found', quantity);
        assert.equal(derivation.answer?.value.toFraction(), exact, quantity);
        assert.equal(derivation.hints.length, 5 * derivation.steps.length);
        assertInOrder(derivation, statedNames(circuit));
        assertNothingIdle(derivation);
        assertReplays(derivation, truthOf(circuit));
      }
    });
  }
});

/** More than one supply, or a bridge: what cannot be taken one after another. */
const others = workedExamples.filter((example) => !simple.includes(example));

describe('the derivation of a worked example with several supplies or a bridge', () => {
  it('is tried on all', () => {
    assert.equal(others.length, 21);
  });
  for (const example of others) {
    const circuit = circuitOf(example);
    it(`reaches every exact answer of ${titlesOf(example)} (${example.id})`, () => {
      for (const { quantity, exact } of example.asked) {
        const derivation = explain(circuit, { find: quantity });
        assert.equal(derivation.status, 'found', quantity);
        assert.equal(derivation.answer?.value.toFraction(), exact, quantity);
        assert.equal(derivation.hints.length, 5 * derivation.steps.length);
        assertInOrder(derivation, statedNames(circuit));
        assertNothingIdle(derivation);
        assertReplays(derivation, truthOf(circuit));
      }
    });
  }
});

describe('backwards, from what a book gives', () => {
  const backwards = workedExamples.filter(({ given }) => given);
  it('is asked in some', () => {
    assert.equal(backwards.length, 18);
  });
  for (const example of backwards)
    it(`every answer of ${titlesOf(example)} (${example.id}) follows`, () => {
      const circuit = circuitOf(example);
      const asked = example.asked.map(({ quantity }) => quantity);
      const truth = told(circuit);
      const given: Record<string, string> = Object.fromEntries(
        (example.given ?? []).map(({ quantity, value }) => [quantity, value]),
      );
      for (const name of statedNames(circuit)) {
        const value = truth.get(name);
        if (value !== undefined && !asked.includes(name)) given[name] = value;
      }
      for (const { quantity, exact } of example.asked) {
        const derivation = explain(circuit, { find: quantity, given });
        assert.equal(derivation.answer?.value.toFraction(), exact, quantity);
        assertInOrder(derivation, [...Object.keys(given), 'R_A1', 'R_S1']);
        assertNothingIdle(derivation);
        assertReplays(derivation, truthOf(circuit));
      }
    });
});

describe('without the reciprocal formula', () => {
  const plain: Lesson = { ...usualCourse, without: ['resistances in parallel'] };
  /** Two or three branches side by side round a supply. */
  const branched = simple.filter((example) => {
    const parallels = electrical(circuitOf(example)).trees.flatMap(function of(tree): number[] {
      if (tree.kind === 'component') return [];
      return [...(tree.kind === 'parallel' ? [tree.parts.length] : []), ...tree.parts.flatMap(of)];
    });
    return suppliesOf(example) === 1 && parallels.length === 1 && Math.max(...parallels) <= 3;
  });
  it('is tried on many', () => {
    assert.ok(branched.length >= 12, `${branched.length}`);
  });
  for (const example of branched)
    it(`${titlesOf(example)} (${example.id}) is explained by a shared p.d. and the sum of the currents`, () => {
      const circuit = circuitOf(example);
      const isReal = circuit.components.some((one) => one.kind === 'supply' && one.internalResistance);
      for (const { quantity, exact } of example.asked)
        for (const course of isReal ? [plain] : [plain, lessons['14–16']]) {
          const { steps, answer } = explain(circuit, { find: quantity, course });
          assert.equal(answer?.value.toFraction(), new Fraction(exact ?? 0).toFraction(), quantity);
          assert.ok(steps.every(({ rule }) => rule !== 'resistances in parallel'));
        }
    });
});
