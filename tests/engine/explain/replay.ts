import assert from 'node:assert/strict';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import type { Derivation } from '../../../src/engine/index.ts';
import { readingOf, sidesOf, type About } from './equation.ts';

/** That no step uses what is not known yet, or finds again what is: so none can go in a circle. */
export function assertInOrder({ steps }: Derivation, given: readonly string[]): void {
  const known = new Set(given);
  for (const { uses, gives } of steps) {
    for (const name of uses) assert.ok(known.has(name), `${gives} uses ${name} before it is known`);
    assert.ok(!known.has(gives), `${gives} is found twice`);
    known.add(gives);
  }
}

/** That nothing is said to be the same as what has just been said to be the same as a third by the same rule: that takes one step. */
export function assertDirect({ steps }: Derivation): void {
  const same = new Map(steps.filter(({ rule }) => rule.startsWith('same')).map((step) => [step.gives, step]));
  for (const { gives, uses, rule, equation, rearranged } of same.values()) {
    for (const name of uses) assert.notEqual(same.get(name)?.rule, rule, `${gives} goes by way of ${name}`);
    assert.equal(equation, rearranged);
  }
}

/** That every step serves the answer: each result is used later, and the last is the answer. */
export function assertNothingIdle({ steps, answer }: Derivation): void {
  const used = new Set(steps.flatMap(({ uses }) => uses));
  for (const { gives } of steps) assert.ok(used.has(gives) || gives === answer?.quantity, `${gives} is idle`);
  if (steps.length > 0) assert.equal(steps.at(-1)?.gives, answer?.quantity);
}

const agree = ([left, right]: readonly [About, About], what: string): void => {
  const off = Math.abs(left.value - right.value);
  assert.ok(off <= left.error + right.error, `${what}: ${left.value} is not ${right.value}`);
};

/**
 * That each step holds on the solution: its equation, the same turned round, the same with numbers (within what their figures leave open),
 * its value and its text.
 */
export function assertReplays({ steps, answer }: Derivation, truth: (name: string) => number): void {
  const exactly = (name: string): About => {
    const value = truth(name);
    assert.ok(Number.isFinite(value), `${name} has no value`);
    return { value, error: 1e-9 * Math.abs(value) + 1e-15 };
  };
  for (const { rule, gives, equation, rearranged, substituted, value, text, unknowns } of steps) {
    agree(sidesOf(equation, exactly), equation);
    agree(sidesOf(rearranged, exactly), rearranged);
    if (unknowns) {
      assert.match(gives, /^\(\d+\)$/);
      for (const sides of [substituted, text]) agree(sidesOf(sides, exactly), sides);
      for (const name of unknowns) assert.ok(text.includes(name), `${name} is not in ${text}`);
      continue;
    }
    // Of a balanced bridge the ratios give that a current is 0.
    const isRatio = rule === 'balanced bridge' && value.equals(0);
    assert.ok(isRatio || rearranged.includes(`${gives} = `), `${rearranged} does not give ${gives}`);
    agree(sidesOf(substituted, exactly), substituted);
    agree([{ value: value.valueOf(), error: 0 }, exactly(gives)], gives);
    agree([readingOf(text), exactly(gives)], `${gives} = ${text}`);
  }
  if (answer) agree([{ value: answer.value.valueOf(), error: 0 }, exactly(answer.quantity)], 'the answer');
}

/** The names of what a line states. */
export const statedNames = ({ components }: Circuit): readonly string[] =>
  components.flatMap(({ id, kind }) => [
    ...['R', 'E', 'r', ...(kind === 'source' ? ['I'] : [])].map((letter) => `${letter}_${id}`),
    ...['V', 'P', 'I'].map((letter) => `${letter}_${id} rated`),
  ]);
