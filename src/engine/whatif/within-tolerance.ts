import type { Circuit } from '../circuit/index.ts';
import type { Fraction } from '../quantity/index.ts';
import { solve, solveExact } from '../solve/index.ts';
import { varied } from './free.ts';

/** The least and the most that a quantity can be. */
export interface Bounds {
  readonly low: Fraction;
  readonly high: Fraction;
}

/** So many resistors with a tolerance have all their corners tried; of more, one is moved at a time. */
const most = 10;

/**
 * The worst case of a quantity while each resistor is anywhere within its stated tolerance. With all others fixed a current, a p.d. or a
 * total resistance only rises or only falls with one resistance, so the worst case is at a corner: all corners are tried up to ten
 * such resistors; beyond, from the corner that looks worst, one is moved at a time until nothing is worse. Exact at the corner that is
 * found. Throws RangeError where the quantity has no value there.
 */
export function withinTolerance(circuit: Circuit, quantity: string): Bounds {
  const resistors = circuit.components.flatMap((each) =>
    each.kind === 'resistor' && each.tolerance
      ? [
          {
            id: each.id,
            ends: [-1, 1].map((sign) =>
              each.resistance.value.mul(each.tolerance ? each.tolerance.mul(sign).div(100).add(1) : 1),
            ),
          },
        ]
      : [],
  );
  const cornerOf = (high: readonly boolean[]): Circuit =>
    resistors.reduce((at, { id, ends }, place) => {
      const value = ends[high[place] ? 1 : 0];
      return value ? varied(at, id, value) : at;
    }, circuit);
  const read = (high: readonly boolean[]): number => solve(cornerOf(high)).quantity(quantity) ?? NaN;
  const exact = (high: readonly boolean[]): Fraction => {
    const value = solveExact(cornerOf(high)).quantity(quantity);
    if (value === undefined) throw new RangeError(`${quantity} has no value here.`);
    return value;
  };

  /** The corner at which the sign times the quantity is most. */
  const worst = (sign: 1 | -1): readonly boolean[] => {
    let best: readonly boolean[] = resistors.map(() => false);
    let value = sign * read(best);
    const better = (high: readonly boolean[]): boolean => {
      const found = sign * read(high);
      if (!(found > value)) return false;
      [best, value] = [high, found];
      return true;
    };
    if (resistors.length <= most) {
      for (let corner = 1; corner < 2 ** resistors.length; corner++)
        better(resistors.map((_, place) => ((corner >> place) & 1) === 1));
      return best;
    }
    for (let moved = true; moved;) {
      moved = false;
      for (const place of resistors.keys()) moved = better(best.with(place, !best[place])) || moved;
    }
    return best;
  };
  return { low: exact(worst(-1)), high: exact(worst(1)) };
}
