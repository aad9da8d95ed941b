import assert from 'node:assert/strict';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import type { ExactSolution } from '../../../src/engine/solve/index.ts';

/** The size of the p.d. across a block of components, of the current through it, or of its resistance. */
export type BlockSize = (size: 'V' | 'I' | 'R', ids: readonly string[]) => Fraction;

/**
 * Measures blocks by energy: a block touches the rest of the circuit at two nodes, between which its p.d. is, and takes the power of its
 * components, which is p.d. times current.
 */
export function solutionOf({ components }: Circuit, solution: ExactSolution): BlockSize {
  return (size, ids) => {
    const nodesOf = (isInside: boolean): ReadonlySet<string> =>
      new Set(
        components.filter(({ id }) => ids.includes(id) === isInside).flatMap(({ from, to }) => [from, to]),
      );
    const outside = nodesOf(false);
    const [from, to, ...more] = [...nodesOf(true)].filter((node) => outside.has(node));
    assert.ok(from !== undefined && to !== undefined && more.length === 0, ids.join());
    const [high, low] = [solution.potential(from), solution.potential(to)];
    assert.ok(high && low);
    const volts = high.sub(low).abs();
    if (size === 'V') return volts;
    const watts = ids.reduce((sum, id) => sum.add(solution.power(id) ?? 0), new Fraction(0)).abs();
    return size === 'I' ? watts.div(volts) : volts.mul(volts).div(watts);
  };
}
