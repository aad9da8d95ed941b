import assert from 'node:assert/strict';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import type { Derivation } from '../../../src/engine/explain/index.ts';

/** That no step uses what is not known yet, or finds again what is. */
export function assertInOrder({ steps }: Derivation, given: readonly string[]): void {
  const known = new Set(given);
  for (const { uses, gives } of steps) {
    for (const name of uses) assert.ok(known.has(name), `${gives} uses ${name} before it is known`);
    assert.ok(!known.has(gives), `${gives} is found twice`);
    known.add(gives);
  }
}

/** That every step serves the answer: each result is used later, and the last is the answer. */
export function assertNothingIdle({ steps, answer }: Derivation): void {
  const used = new Set(steps.flatMap(({ uses }) => uses));
  for (const { gives } of steps) assert.ok(used.has(gives) || gives === answer?.quantity, `${gives} is idle`);
  if (steps.length > 0) assert.equal(steps.at(-1)?.gives, answer?.quantity);
}

/** The names of what a line states. */
export const statedNames = ({ components }: Circuit): readonly string[] =>
  components.flatMap(({ id }) => [`R_${id}`, `E_${id}`, `r_${id}`]);
