import { Fraction } from '../quantity/index.ts';
import { isBreak } from './breaks.ts';
import type { Graph } from './graph.ts';
import { idsOf } from './ids-of.ts';
import { isOut } from './sent.ts';
import type { Fault } from './solution.ts';

/** The open switches and the like that lie between pieces which nothing joins. */
function opened({ components, roots, tails, heads }: Graph): string[] {
  return components.flatMap((part, place) =>
    isBreak(part) && roots[tails[place] ?? 0] !== roots[heads[place] ?? 0] ? [part.id] : [],
  );
}

/**
 * Why constant currents cannot flow, or leave p.d.s open: their supplies alone join pieces of the circuit. Where one leads to a piece
 * that no other leads to, its current has no way back; where several do, they set the current of one path between them, and no
 * p.d. is determined even if they agree.
 */
export function constantCurrentFaults(graph: Graph): Fault[] {
  const { components, amperes, roots, tails, heads, supplies } = graph;
  const pieceOf = (ends: readonly number[], branch: number): number => roots[ends[branch] ?? 0] ?? 0;
  const joining = new Set(
    supplies.filter(
      (branch) =>
        amperes[branch] && !isOut(components[branch]) && pieceOf(tails, branch) !== pieceOf(heads, branch),
    ),
  );
  const at = new Map<number, Set<number>>();
  for (const branch of joining)
    for (const ends of [tails, heads]) {
      const piece = pieceOf(ends, branch);
      at.set(piece, (at.get(piece) ?? new Set()).add(branch));
    }
  const faults: Fault[] = [];
  const lonely = [...at.values()].filter(({ size }) => size === 1);
  for (const own of lonely) {
    const [branch] = own;
    if (branch === undefined || !joining.delete(branch)) continue;
    for (const ends of [tails, heads]) {
      const there = at.get(pieceOf(ends, branch));
      there?.delete(branch);
      if (there?.size === 1) lonely.push(there);
    }
    const id = components[branch]?.id ?? '';
    const breaks = opened(graph);
    if (amperes[branch]?.n)
      faults.push({ code: 'current without a path', data: { id, at: breaks }, ids: [id, ...breaks] });
  }
  const rings: { readonly branches: Set<number>; readonly pieces: Set<number> }[] = [];
  for (const branch of joining) {
    const pieces = [pieceOf(tails, branch), pieceOf(heads, branch)];
    const ring = { branches: new Set([branch]), pieces: new Set(pieces) };
    for (const other of rings.filter((each) => pieces.some((piece) => each.pieces.has(piece)))) {
      for (const one of other.branches) ring.branches.add(one);
      for (const piece of other.pieces) ring.pieces.add(piece);
      rings.splice(rings.indexOf(other), 1);
    }
    rings.push(ring);
  }
  for (const { branches, pieces } of rings) {
    const agree = [...pieces].every((piece) =>
      [...branches]
        .reduce((sum, branch) => {
          const current = amperes[branch] ?? 0;
          if (pieceOf(heads, branch) === piece) return sum.add(current);
          return pieceOf(tails, branch) === piece ? sum.sub(current) : sum;
        }, new Fraction(0))
        .equals(0),
    );
    const ids = idsOf(graph, [...branches]);
    faults.push({
      code: agree ? 'p.d. undetermined' : 'currents in contradiction',
      data: { supplies: ids },
      ids,
    });
  }
  return faults;
}
