import { isSupply, type Circuit } from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import type { ExactSolution } from '../solve/index.ts';
import { leaves, seriesParallel, type Tree } from '../topology/index.ts';
import type { Course } from '../words/index.ts';
import type { Because } from './codes.ts';

const zero = new Fraction(0);
const idsOf = (tree: Tree): string[] => leaves(tree).map(({ id }) => id);
const holds = (tree: Tree, id: string): boolean => leaves(tree).some((leaf) => leaf.id === id);

/** The blocks that hold a component, from the whole down to itself. */
function pathTo(tree: Tree, id: string): Tree[] {
  if (tree.kind === 'component') return [tree];
  const part = tree.parts.find((each) => holds(each, id));
  return part ? [tree, ...pathTo(part, id)] : [tree];
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

/** The size of the current through a block, or of the p.d. across it. */
function sizeOf(letter: 'I' | 'V', block: Tree, solution: ExactSolution): Fraction {
  if (letter === 'I') return currentOf(block, solution).abs();
  const [from, to] = [block.from, block.to].map((node) => solution.potential(node) ?? zero);
  return (from ?? zero).sub(to ?? zero).abs();
}

/**
 * The blocks to speak of, from the current through the supply down to a quantity of a component: along the blocks of what has risen,
 * to the one beside it that holds the component, and down that one, where all does the same.
 */
function linksTo(
  letter: 'I' | 'V',
  id: string,
  path: readonly Tree[],
  supply: Tree,
): (readonly ['I' | 'V', Tree])[] {
  const links: (readonly ['I' | 'V', Tree])[] = [['I', supply]];
  for (const [depth, block] of path.entries()) {
    const rising = path[depth + 1];
    if (!rising || block.kind === 'component') break;
    const beside = block.parts.find((part) => part !== rising && holds(part, id));
    if (beside === supply) break;
    if (beside) {
      for (const next of pathTo(beside, id))
        links.push([next.kind === 'component' ? letter : next.kind === 'parallel' ? 'V' : 'I', next]);
      return links;
    }
    links.push([block.kind === 'series' ? 'V' : 'I', rising]);
  }
  const own = id === idsOf(supply)[0] ? supply : path.at(-1);
  const [told, about] = links.at(-1) ?? [];
  if (own && (told !== letter || about !== own)) links.push([letter, own]);
  return links;
}

/**
 * Why a quantity of a component rises, falls or stays the same when a resistance rises, in a circuit that is series and parallel round one supply:
 * up from the resistance to the whole, then down from the supply's current. What each link says is read from the solutions before and
 * after. Empty elsewhere, and where the resistance changes nothing, because it carries nothing or stands beside a short.
 */
export function reasonsFor(
  circuit: Circuit,
  quantity: string,
  what: string,
  before: ExactSolution,
  after: ExactSolution,
  { wording: pd }: Pick<Course, 'wording'>,
): Because[] {
  const tree = seriesParallel(circuit);
  const supplies = circuit.components.filter(isSupply);
  const [letter = '', target = ''] = quantity.split('_');
  const [{ id: source } = { id: '' }] = supplies;
  if (tree.kind !== 'series' || tree.from !== tree.to || supplies.length !== 1) return [];
  const supply = tree.parts.find((part) => part.kind === 'component' && part.id === source);
  const id = target === 'total' ? source : target;
  if (!supply || what === source || !holds(tree, what)) return [];
  if ((letter !== 'I' && letter !== 'V') || !holds(tree, id)) return [];
  const path = pathTo(tree, what);
  const isIdle = (block: Tree): boolean =>
    (['I', 'V'] as const).some((size) => sizeOf(size, block, before).n === 0n);
  if (path.slice(1).some(isIdle)) return [];

  let last = 1;
  return [
    { code: 'this resistance rises', data: { id: what } },
    ...path
      .slice(1, -1)
      .reverse()
      .map((block): Because => ({ code: 'so their resistance rises', data: { ids: idsOf(block) } })),
    ...linksTo(letter, id, path, supply).map(([size, block]): Because => {
      const sign = sizeOf(size, block, after).compare(sizeOf(size, block, before));
      const change = sign > 0 ? 'rises' : sign < 0 ? 'falls' : 'stays the same';
      const but = sign === 0 && last !== 0;
      last = sign;
      const data = { ids: idsOf(block), change, but } as const;
      return size === 'I' ? { code: 'so the current', data } : { code: 'so the p.d.', data: { ...data, pd } };
    }),
  ];
}
