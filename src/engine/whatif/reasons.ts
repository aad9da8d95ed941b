import { isSupply, type Circuit } from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import type { ExactSolution } from '../solve/index.ts';
import { leaves, seriesParallel, type Series, type Tree } from '../topology/index.ts';
import type { Course } from '../words/index.ts';
import type { Because, BecauseData } from './codes.ts';
import { holds, linksTo, pathTo, type Link } from './links.ts';
import { slope, type Turn, type Turns } from './turn.ts';

type Change = BecauseData['so the current']['change'];

const zero = new Fraction(0);
/** What a block is called by: all in it but ideal voltmeters, which change nothing. */
const idsOf = ({ components }: Circuit, tree: Tree): string[] => {
  const all = leaves(tree).map(({ id }) => id);
  const ideal = components.filter((each) => each.kind === 'voltmeter' && !each.resistance);
  const own = all.filter((id) => ideal.every((meter) => meter.id !== id));
  return own.length > 0 ? own : all;
};

/** All but the supply of a circuit that closes on itself. */
function outside(tree: Series, supply: Tree): Tree {
  const place = tree.parts.indexOf(supply);
  const parts = [...tree.parts.slice(place + 1), ...tree.parts.slice(0, place)];
  const [only] = parts;
  return only && parts.length === 1 ? only : { ...tree, parts, from: supply.to, to: supply.from };
}

/** The current through a block, from its `from` to its `to`. */
function currentOf(block: Tree, solution: ExactSolution): Fraction {
  if (block.kind === 'component') {
    const current = solution.current(block.id) ?? zero;
    return block.reversed ? current.neg() : current;
  }
  const currents = block.parts.map((part) => currentOf(part, solution));
  return block.kind === 'series'
    ? (currents[0] ?? zero)
    : currents.reduce((sum, current) => sum.add(current), zero);
}

/** The size of the current through a block, of the p.d. across it, or of its resistance. */
function sizeOf([letter, block]: Link, solution: ExactSolution): Fraction {
  if (letter === 'I') return currentOf(block, solution).abs();
  const [from, to] = [block.from, block.to].map((node) => solution.potential(node) ?? zero);
  const pd = (from ?? zero).sub(to ?? zero).abs();
  return letter === 'V' ? pd : pd.div(sizeOf(['I', block], solution));
}

/** What a quantity of such a derivative does. */
export const changeOf = (derivative: Fraction): Change =>
  derivative.n === 0n ? 'stays the same' : derivative.s > 0n ? 'rises' : 'falls';

/** What a size does while all is turned together, and what alone would have it do otherwise. */
function changed(link: Link, turns: readonly Turn[]): { change: Change; against: readonly string[] } {
  const alone = turns.map((turn) => slope(turn, (solution) => sizeOf(link, solution)));
  const change = changeOf(alone.reduce((sum, each) => sum.add(each), zero));
  const others = turns.filter((_, place) => alone[place]?.n && changeOf(alone[place]) !== change);
  return { change, against: others.map(({ what }) => what) };
}

/**
 * Why a quantity of a component rises, falls or stays the same when a resistance rises, or the contact of a potentiometer slides, in a circuit that
 * is series and parallel round one supply: up from the resistance to the whole, then down from the supply's current. What each link says is
 * the sign of an exact derivative. With one resistance a current or a p.d. goes one way only, whatever the others are, so where the two parts of a
 * potentiometer agree, it does so all along the track; where they do not, it is looked for `elsewhere`, with the contact at other places. A total
 * resistance follows on the way up. Empty where the circuit or the quantity is another, and where the resistances change nothing, because they carry nothing.
 */
export function reasonsFor(
  circuit: Circuit,
  quantity: string,
  turns: Turns,
  elsewhere: () => readonly Turns[],
  { wording: pd }: Pick<Course, 'wording'>,
): Because[] {
  const tree = seriesParallel(circuit);
  const [own, other] = turns;
  const supplies = circuit.components.filter(isSupply);
  const [letter = '', target = ''] = quantity.split('_');
  const [{ id: source } = { id: '' }] = supplies;
  if (tree.kind !== 'series' || tree.from !== tree.to || supplies.length !== 1) return [];
  const supply = tree.parts.find((part) => part.kind === 'component' && part.id === source);
  const id = target === 'total' ? source : target;
  const isTotal = quantity === 'R_total' || quantity === 'R_loop';
  if (!supply || !(isTotal || (/^[IV]$/.test(letter) && holds(tree, id)))) return [];
  const active = turns.filter(
    ({ what, at }) => what !== source && holds(tree, what) && at(0).current(what)?.n,
  );
  if (active.length === 0) return [];
  const paths = active.map(({ what }) => pathTo(tree, what));
  const blocks = [...new Set(paths.flatMap((path) => path.slice(1, -1)))];
  const together = blocks.sort((one, other) => leaves(one).length - leaves(other).length);
  const whole = outside(tree, supply);
  const links = [
    ...together.filter((block) => !isTotal || block !== whole).map((block): Link => ['R', block]),
    ...(isTotal ? [['R', whole] satisfies Link] : linksTo(letter === 'I' ? 'I' : 'V', id, paths, supply)),
  ];
  let last: Change = 'rises';
  const chain = links.map(([size, block]): Because => {
    const { change, against } = changed([size, block], active);
    const but = change === 'stays the same' && last !== change;
    last = change;
    const data = { ids: idsOf(circuit, block), change, but, against };
    if (isTotal && block === whole)
      return { code: 'so the whole', data: { ...data, name: quantity === 'R_loop' ? quantity : 'R_total' } };
    if (size === 'V') return { code: 'so the p.d.', data: { ...data, pd } };
    return { code: size === 'I' ? 'so the current' : 'so their resistance', data };
  });
  return [
    other
      ? { code: 'the contact slides', data: { rises: own.what, falls: other.what } }
      : { code: 'this resistance rises', data: { id: own.what } },
    ...chain,
    ...otherwise(links.at(-1), active, last, elsewhere),
    ...signed(quantity, own, last),
  ];
}

/** That what was said last is otherwise somewhere else, where the parts that are turned do not agree on it. */
function otherwise(
  link: Link | undefined,
  turns: readonly Turn[],
  here: Change,
  elsewhere: () => readonly Turns[],
): Because[] {
  if (!link || changed(link, turns).against.length === 0) return [];
  const found = new Set(elsewhere().map((there) => changed(link, there).change));
  // Where it turns round it stays the same for a moment.
  for (const change of [here, 'stays the same'] as const) found.delete(change);
  return found.size > 0 ? [{ code: 'elsewhere along the track', data: { changes: [...found] } }] : [];
}

/** What a negative quantity does, as its size does what was said. */
function signed(name: string, { at }: Turn, change: Change): Because[] {
  const isNegative = (at(0).quantity(name) ?? zero).s < 0n;
  if (!isNegative || change === 'stays the same') return [];
  return [{ code: 'counted the other way', data: { name, size: change } }];
}
