import { isSupply, resistanceOf, type Circuit, type Component } from '../circuit/index.ts';
import { looksOn } from '../topology/index.ts';
import { relation, term, type Relation } from './relation.ts';
import { isJoin, points } from './structure.ts';

/** A component between the middles of two pairs of resistances that stand side by side. */
export interface Bridge {
  readonly middle: Component;
  /** What is 0 where the pairs divide alike: its current, or of an ideal voltmeter its p.d. */
  readonly shows: string;
  /** The two of one pair, then those of the other from the same end. */
  readonly arms: readonly [Component, Component, Component, Component];
}

const other = (point: (node: string) => string, { from, to }: Component, node: string): string =>
  point(from) === node ? point(to) : point(from);

function bridgeAt(circuit: Circuit, middle: Component): Bridge | undefined {
  const rest = circuit.components.filter((one) => one !== middle);
  const point = points({ ...circuit, components: rest });
  const ends = [point(middle.from), point(middle.to)] as const;
  const resistances = rest.filter((one) => !isJoin(one) && !looksOn(one));
  const at = (node: string): readonly Component[] =>
    resistances.filter(({ from, to }) => (point(from) === node) !== (point(to) === node));
  const [[one, two, ...third], [three, four, ...fifth]] = [at(ends[0]), at(ends[1])];
  if (ends[0] === ends[1] || !one || !two || !three || !four || third.length + fifth.length > 0)
    return undefined;
  const arms = [one, two, three, four];
  if (new Set(arms).size < 4 || arms.some((arm) => isSupply(arm) || !resistanceOf(arm))) return undefined;
  const [a, b, c, d] = [
    other(point, one, ends[0]),
    other(point, two, ends[0]),
    other(point, three, ends[1]),
    other(point, four, ends[1]),
  ];
  const shows = looksOn(middle) ? `V_${middle.id}` : `I_${middle.id}`;
  if (a === b || !((a === c && b === d) || (a === d && b === c))) return undefined;
  return { middle, shows, arms: a === c ? [one, two, three, four] : [one, two, four, three] };
}

/** The bridges of a circuit, as textbooks draw them: four resistances, and something between their middles that conducts or looks on. */
export const bridgesOf = (circuit: Circuit): readonly Bridge[] =>
  circuit.components.flatMap((middle) => {
    if (isSupply(middle) || middle.kind === 'wire') return [];
    if (!looksOn(middle) && !resistanceOf(middle)) return [];
    return bridgeAt(circuit, middle) ?? [];
  });

/** That a bridge is balanced where its pairs divide alike, and the other way round (common practice). */
export function balance({ shows, arms, middle }: Bridge): Relation {
  const [one, two, three, four] = arms.map(({ id }) => `R_${id}`) as [string, string, string, string];
  const about = [...arms.map(({ id }) => id), middle.id];
  const factors = [term(one), term(two, 1, -1), term(three, 1, -1), term(four)];
  return relation('balanced bridge', 'balance', about, shows, ...factors);
}
