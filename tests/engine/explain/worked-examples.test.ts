import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { explain } from '../../../src/engine/explain/index.ts';
import { electrical } from '../../../src/engine/topology/index.ts';
import { circuitOf, titlesOf, workedExamples } from '../solve/reference.ts';
import { assertInOrder, assertNothingIdle, statedNames } from './replay.ts';

/** Series and parallel round one supply. (Batteries in series are one for the book: not for us yet.) */
const simple = workedExamples.filter((example) => {
  const circuit = circuitOf(example);
  const supplies = circuit.components.filter(({ kind }) => kind === 'supply');
  return supplies.length < 2 && electrical(circuit).bridge.length === 0;
});

describe('the derivation of a worked example', () => {
  for (const example of simple)
    it(`reaches every exact answer of ${titlesOf(example)} (${example.id})`, () => {
      const circuit = circuitOf(example);
      for (const { quantity, exact } of example.asked) {
        if (exact === null) continue;
        const derivation = explain(circuit, { find: quantity });
        assert.equal(derivation.status, 'found', quantity);
        assert.equal(derivation.answer?.value.toFraction(), new Fraction(exact).toFraction(), quantity);
        assert.equal(derivation.hints.length, 5 * derivation.steps.length);
        assertInOrder(derivation, statedNames(circuit));
        assertNothingIdle(derivation);
      }
    });
});

it('says of a bridge that equations have to be solved together', () => {
  const bridged = workedExamples.filter((example) => electrical(circuitOf(example)).bridge.length > 0);
  assert.ok(bridged.length > 2);
  for (const example of bridged) {
    const { status, reason } = explain(circuitOf(example), { find: 'R_total' });
    assert.equal(status, 'not enough', example.id);
    assert.equal(reason?.code, 'needs simultaneous equations', example.id);
  }
});
