import type { Branch } from './branches.ts';
import { amount, constant, nothing, plus, scaled, type Linear } from './linear.ts';
import type { Sign } from '../relation.ts';
import { Fraction } from '../../quantity/index.ts';

/** A branch as a way meets it: 1 where its current is counted the same way. */
export type Met = readonly [branch: Branch, along: Sign];

/** What the currents and the loops of branches come to. */
export interface Network {
  /** The branches whose currents are the unknowns, each closing one loop; a constant current is none. */
  readonly chords: readonly Branch[];
  /** The branches that close a loop though their current is known. */
  readonly given: readonly Branch[];
  /** The junction law for the current of any other branch: the branches whose currents it is the sum of. */
  readonly junction: ReadonlyMap<Branch, readonly Met[]>;
  /** What the current of each branch is in the unknown ones; a number where it is known. */
  readonly currents: ReadonlyMap<Branch, Linear>;
  /** The loop that a chord closes, the way its current is counted. */
  readonly loop: (chord: Branch) => readonly Met[];
}

const isIdeal = ({ passed }: Branch, isReal: (id: string) => boolean): boolean =>
  passed.every(({ part }) => part.kind === 'supply' && !isReal(part.label));

/**
 * Chooses the unknown currents so that there are as few as can be, each in a short loop: a tree holds the branches of supplies without
 * resistance first, then those at the node where most meet, supplies last. A current that is known is no unknown, and a branch of
 * which something else is not known, such as the p.d. of a constant current, is in no loop but its own: they are left out of the tree if they
 * can be.
 */
export function networkOf(
  branches: readonly Branch[],
  isReal: (id: string) => boolean,
  value: (name: string) => Fraction | undefined,
): Network {
  const meeting = (node: string): number =>
    branches.filter(({ tail, head }) => tail === node || head === node).length;
  const nodes = [...new Set(branches.flatMap(({ tail, head }) => [tail, head]))];
  const centre = nodes.reduce((best, node) => (meeting(node) > meeting(best) ? node : best), nodes[0] ?? '');
  const isUnknown = ({ passed }: Branch): boolean =>
    passed.some(({ part: { kind, label } }) => {
      if (kind === 'source') return true;
      const names =
        kind !== 'supply' ? [`R_${label}`] : [`E_${label}`, ...(isReal(label) ? [`r_${label}`] : [])];
      return names.some((name) => !value(name));
    });
  const rank = (branch: Branch): number =>
    (value(branch.current) || isUnknown(branch) ? 8 : 0) +
    (isIdeal(branch, isReal) ? 0 : 4) +
    ([branch.tail, branch.head].includes(centre) ? 0 : 2) +
    (branch.passed.some(({ part }) => part.kind === 'supply') ? 1 : 0);
  const piece = new Map(nodes.map((node) => [node, node]));
  const tree: Branch[] = [];
  for (const branch of branches.toSorted((a, b) => rank(a) - rank(b))) {
    const [one = '', other = ''] = [piece.get(branch.tail), piece.get(branch.head)];
    if (one === other) continue;
    tree.push(branch);
    for (const [node, own] of piece) if (own === other) piece.set(node, one);
  }
  const closing = branches.filter((branch) => !tree.includes(branch));
  const chords = closing.filter(({ current }) => !value(current));

  const way = new Map<string, Met>();
  const order: string[] = [];
  const grow = (node: string): void => {
    order.push(node);
    for (const branch of tree) {
      const isTail = branch.tail === node;
      const next = isTail ? branch.head : branch.tail;
      if ((!isTail && branch.head !== node) || order.includes(next)) continue;
      way.set(next, [branch, isTail ? -1 : 1]);
      grow(next);
    }
  };
  for (const root of [centre, ...nodes]) if (!order.includes(root)) grow(root);

  const currents = new Map<Branch, Linear>(
    closing.map((chord) => {
      const own = value(chord.current);
      return [chord, own ? constant(own) : amount(chord.current)];
    }),
  );
  const junction = new Map<Branch, readonly Met[]>();
  for (const node of order.toReversed()) {
    const up = way.get(node);
    if (!up) continue;
    const [branch, along] = up;
    // Out of the node through the branch flows what all the others bring.
    const sum = branches
      .filter((one) => one !== branch && one.tail !== one.head && (one.tail === node || one.head === node))
      .map((one): Met => [one, (one.head === node) === (along === 1) ? 1 : -1]);
    junction.set(branch, sum);
    currents.set(
      branch,
      sum
        .map(([one, sign]) => scaled(currents.get(one) ?? amount(one.current), new Fraction(sign)))
        .reduce(plus, nothing),
    );
  }

  const toRoot = (node: string): readonly Met[] => {
    const up = way.get(node);
    if (!up) return [];
    const [branch, along] = up;
    return [up, ...toRoot(along === 1 ? branch.head : branch.tail)];
  };
  const loop = (chord: Branch): readonly Met[] => {
    const [down, up] = [toRoot(chord.head), toRoot(chord.tail)];
    const onwards = down.filter(([branch]) => !up.some(([other]) => other === branch));
    const before = up.filter(([branch]) => !down.some(([other]) => other === branch));
    return [
      [chord, 1],
      ...onwards,
      ...before.map(([branch, along]): Met => [branch, along === 1 ? -1 : 1]).reverse(),
    ];
  };
  const given = closing.filter((branch) => !chords.includes(branch));
  return { chords, given, junction, currents, loop };
}
