import { faultIn, isSupply, type Circuit } from '../circuit/index.ts';
import type { Fraction } from '../quantity/index.ts';
import { solve } from '../solve/index.ts';
import { seriesParallel } from '../topology/index.ts';
import { varied } from './free.ts';
import { sensitivity } from './sensitivity.ts';

/** A resistor that may have any resistance between two ends. */
export interface Loose {
  readonly id: string;
  readonly ends: readonly [low: Fraction, high: Fraction];
}

/** So many loose resistors have all their corners tried. */
const most = 10;

/** The resistors that have a stated tolerance, and what it lets them be. */
export const looseOf = ({ components }: Circuit): readonly Loose[] =>
  components.flatMap((each) => {
    if (each.kind !== 'resistor' || !each.tolerance || faultIn(each)) return [];
    const { value } = each.resistance;
    const part = value.mul(each.tolerance).div(100);
    return part.n === 0n ? [] : [{ id: each.id, ends: [value.sub(part), value.add(part)] as const }];
  });

/** The circuit with each loose resistor at its high or its low end. */
const cornerOf = (circuit: Circuit, loose: readonly Loose[], high: readonly boolean[]): Circuit =>
  loose.reduce((at, { id, ends }, place) => varied(at, id, ends[high[place] ? 1 : 0]), circuit);

/** The corner from which moving any one resistor to its other end makes a quantity no larger; with the sign −1 no smaller. */
function climbed(
  circuit: Circuit,
  loose: readonly Loose[],
  quantity: string,
  sign: 1 | -1,
): readonly boolean[] {
  const read = (high: readonly boolean[]): number =>
    sign * (solve(cornerOf(circuit, loose, high)).quantity(quantity) ?? NaN);
  let best: readonly boolean[] = loose.map(() => false);
  let value = read(best);
  for (let moved = true; moved;) {
    moved = false;
    for (const place of loose.keys()) {
      const other = best.with(place, !best[place]);
      const found = read(other);
      if (found > value) [best, value, moved] = [other, found, true];
    }
  }
  return best;
}

/** Whether a quantity answers to each resistance in one way only, whatever the others are. */
function isOneWay(circuit: Circuit, quantity: string): boolean {
  const isOfOne = /^([IV]_[^_]+|R_total)$/.test(quantity);
  const supplies = circuit.components.filter(isSupply);
  return isOfOne && supplies.length < 2 && seriesParallel(circuit).kind !== 'irreducible';
}

/** Settings of the loose resistors. */
export interface Corners {
  readonly corners: readonly Circuit[];
  /** Whether the worst cases are certainly among them. */
  readonly proved: boolean;
}

/**
 * The settings among which a current, a p.d. or a total resistance is least and most. With all others fixed it only rises or only falls
 * with one resistance, so it is so at a corner. Series and parallel round one supply, which of the two never depends on the others: two
 * corners are enough. Elsewhere all are tried up to ten resistors; beyond, from the corner that looks worst, one is moved at a time.
 */
export function worstCorners(circuit: Circuit, loose: readonly Loose[], quantity: string): Corners {
  const at = (high: readonly boolean[]): Circuit => cornerOf(circuit, loose, high);
  if (isOneWay(circuit, quantity)) {
    const rising = loose.map(({ id }) => sensitivity(circuit, quantity, id).direction === 'rises');
    return { corners: [at(rising.map((rises) => !rises)), at(rising)], proved: true };
  }
  if (loose.length <= most) {
    const corners = Array.from({ length: 2 ** loose.length }, (_, bits) =>
      at(loose.map((_, place) => ((bits >> place) & 1) === 1)),
    );
    return { corners, proved: true };
  }
  const found = ([-1, 1] as const).map((sign) => at(climbed(circuit, loose, quantity, sign)));
  return { corners: found, proved: false };
}
