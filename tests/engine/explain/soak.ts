import assert from 'node:assert/strict';
import fc from 'fast-check';
import { formatCircuit } from '../../../src/engine/notation/format/index.ts';
import { isSupply, type Circuit } from '../../../src/engine/circuit/index.ts';
import { explain, type Question } from '../../../src/engine/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { driven, told } from './random-circuit.ts';
import { web } from './random-web.ts';
import { assertDirect, assertInOrder, assertNothingIdle, assertReplays, statedNames } from './replay.ts';
import { bondsOf, isWithin } from './shortest.ts';
import { truthOf } from './truth.ts';

/** What a soak came across. */
export interface Soaked {
  readonly circuits: number;
  readonly found: number;
  /** Derivations that needed Kirchhoff's equations. */
  readonly solved: number;
  /** Derivations compared with the shortest ones. */
  readonly compared: number;
  readonly longest: number;
}

const small = driven.filter(({ components }) => components.length <= 6);
const numbers = fc.array(fc.nat(), { minLength: 3, maxLength: 10 });

/** A question whose givens are some of the readings, or, as often, what the line states. */
function questionOf(circuit: Circuit, [pick = 0, from = 0, ...picks]: readonly number[]): Question {
  const all = [...told(circuit)];
  const [find = ''] = all[pick % all.length] ?? [];
  if (from % 2 === 0) return { find };
  const given = picks.flatMap((one) =>
    [all[one % all.length] ?? []].filter(([name]) => name && name !== find),
  );
  return { find, given: Object.fromEntries(given) as Record<string, string> };
}

/** Whether a derivation ends where the solver does, uses nothing before it is known, goes in no circle, and holds step by step. */
function check(circuit: Circuit, { find, given }: Question) {
  const derivation = explain(circuit, { find, ...(given && { given }) });
  assert.notEqual(derivation.status, 'contradiction', 'readings of one circuit agree');
  if (!derivation.answer) return derivation;
  assert.equal(derivation.answer.value.toFraction(), solveExact(circuit).quantity(find)?.toFraction(), find);
  const silent = circuit.components.filter(({ kind }) => kind === 'ammeter' || kind === 'switch');
  const known = given ? [...Object.keys(given), ...silent.map(({ id }) => `R_${id}`)] : statedNames(circuit);
  assertInOrder(derivation, known);
  assertNothingIdle(derivation);
  assertDirect(derivation);
  assertReplays(derivation, truthOf(circuit));
  return derivation;
}

/** Explains so many random circuits, a third of them webs, a third of up to six components compared with the shortest way. */
export function soak(count: number, seed: number): Soaked {
  const kinds = fc.oneof(driven, small, web).chain((circuit) => fc.tuple(fc.constant(circuit), numbers));
  let [found, solved, compared, longest] = [0, 0, 0, 0];
  for (const [circuit, picks] of fc.sample(kinds, { numRuns: count, seed })) {
    const question = questionOf(circuit, picks);
    try {
      const { steps, answer } = check(circuit, question);
      if (!answer) continue;
      found += 1;
      longest = Math.max(longest, steps.length);
      if (steps.some(({ unknowns }) => unknowns)) solved += 1;
      if (
        circuit.components.length > 6 ||
        circuit.components.filter(isSupply).some(({ kind }, at) => kind === 'source' || at > 0)
      )
        continue;
      const bonds = bondsOf(circuit, [...Object.keys(question.given ?? {}), question.find]);
      if (bonds.length === 0 || steps.length === 0) continue;
      compared += 1;
      const start = new Set(question.given ? Object.keys(question.given) : statedNames(circuit));
      assert.ok(
        !isWithin(bonds, start, question.find, steps.length - 2),
        `${steps.length} steps are too many`,
      );
    } catch (error) {
      throw new Error(`${formatCircuit(circuit)}: ${JSON.stringify(question)}`, { cause: error });
    }
  }
  return { circuits: count, found, solved, compared, longest };
}
