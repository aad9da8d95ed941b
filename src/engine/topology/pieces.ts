import { isSupply, type Circuit } from '../circuit/index.ts';
import { blocks, type Block } from './blocks.ts';
import { incidence, type Edge } from './edge.ts';
import { leaves } from './leaves.ts';
import { orient } from './orient.ts';
import { reduce } from './reduce.ts';
import { closing, treeOf } from './tree-of.ts';
import type { Tree } from './tree.ts';
import { turnedRound } from './turned-round.ts';

/** What hangs together of a circuit: series and parallel all the way down, or a web of parts that are. */
export interface Piece {
  /** Undefined where it is not series and parallel all the way down. */
  readonly tree: Tree | undefined;
  /**
   * Its series and parallel parts between the nodes where more than two of them meet (or one ends). The first one closes the piece:
   * it runs against the way its first supply drives; where there is none, from one terminal to the other, with the id ''. What has
   * both its ends at one node `n` runs from there to a node `n\\n` and its id.
   */
  readonly parts: readonly Tree[];
  /** Pairs of nodes between which a part more would leave no node through which all ways between two parts lead. */
  readonly ties: readonly (readonly [string, string])[];
}

/** The trees of edges, reduced as far as the `kept` nodes allow. */
function reduced(edges: readonly Edge[], kept: ReadonlySet<string>): Tree[] {
  const trees: Tree[] = [];
  for (const part of reduce(edges, kept)) orient(part, part.from, trees);
  return trees;
}

/** The parts of a block that is closed by the edge `cut`, that one's first. */
function closed(cut: Edge, edges: readonly Edge[], kept: ReadonlySet<string>): Tree[] {
  const rest = edges.filter((edge) => edge !== cut);
  const [first, ...others] = cut.id === '' ? [] : reduced([cut, ...rest], kept);
  if (!first || others.length === 0) {
    const { id, from, to } = cut;
    return [
      { kind: 'component', id, reversed: false, from, to },
      ...reduced(rest, new Set([...kept, cut.from, cut.to])),
    ];
  }
  const leaf = leaves(first).find(({ id }) => id === cut.id);
  return [leaf?.reversed ? turnedRound(first) : first, ...others];
}

/** Blocks, those of single edges taken together, and the nodes at which they meet or a chain of single edges branches. */
function jointed(found: readonly Block<Edge>[]): { groups: (readonly Edge[])[]; joints: string[] } {
  const single = found.flatMap(({ edges }) => (edges.length === 1 ? edges : []));
  const groups = [single, ...found.map(({ edges }) => edges).filter((edges) => edges.length > 1)].filter(
    (edges) => edges.length > 0,
  );
  const met = new Set<string>();
  const joints: string[] = [];
  for (const edges of groups) {
    for (const [node, here] of incidence(edges)) {
      if (met.has(node) || (edges === single && here.length > 2)) joints.push(node);
      met.add(node);
    }
  }
  return { groups, joints };
}

/**
 * Pairs of nodes that, joined, leave no node through which all ways between two parts lead: beside each node where blocks meet, a
 * neighbour in one is tied to a neighbour in the other. What lies in a plane still does.
 */
function tiesOf(parts: readonly Edge[]): (readonly [string, string])[] {
  const found = blocks(parts);
  const [only] = parts;
  if (only && parts.length === 1 && found.length === 1) return [[only.from, only.to]];
  const meeting = new Map<string, number[]>();
  found.forEach(({ edges }, place) => {
    for (const node of incidence(edges).keys()) {
      const here = meeting.get(node);
      if (here) here.push(place);
      else meeting.set(node, [place]);
    }
  });
  const beside = new Map<string, string>();
  /** The node at which a block waits for its tie: there is one only, since no way goes round through several blocks. */
  const joints = new Map<number, string>();
  /** Takes a block in; the place from which on the next one waits. */
  const attach = (place: number): number => {
    let next = place + 1;
    for (const { from, to } of found[place]?.edges ?? [])
      for (const node of [from, to]) {
        if (beside.has(node)) continue;
        beside.set(node, node === from ? to : from);
        for (const other of meeting.get(node) ?? []) {
          if (other === place) continue;
          joints.set(other, node);
          next = Math.min(next, other);
        }
      }
    return next;
  };
  const ties: (readonly [string, string])[] = [];
  for (let place = attach(0); place < found.length;) {
    const joint = joints.get(place);
    joints.delete(place);
    const edge = found[place]?.edges.find(({ from, to }) => from === joint || to === joint);
    const near = joint && beside.get(joint);
    if (edge && near) ties.push([edge.from === joint ? edge.to : edge.from, near]);
    place = edge ? attach(place) : place + 1;
  }
  return ties;
}

/** The pieces of a circuit in the order of their first components. */
export function pieces(circuit: Circuit): readonly Piece[] {
  const { components } = circuit;
  const supplied = new Set(components.filter(isSupply).map(({ id }) => id));
  const bent = new Set(components.filter(({ from, to }) => from === to).map(({ id }) => id));
  const straight = components.map(({ id, from, to }): Edge => ({
    id,
    from,
    to: bent.has(id) ? `${to}\n${id}` : to,
  }));
  const way = supplied.size > 0 ? undefined : closing(circuit);
  const all = way ? [way, ...straight] : straight;
  const places = new Map(all.map((edge, place) => [edge, place]));
  const placeOf = (edge: Edge): number => places.get(edge) ?? 0;
  const found: Block<Edge>[][] = [];
  for (const block of blocks(all)) (found[block.piece] ??= []).push(block);
  return found.map((own): Piece => {
    const edges = own.flatMap((block) => block.edges);
    const driven = edges.filter(({ id }) => supplied.has(id));
    const [cut] = (driven.length > 0 ? driven : edges).toSorted((a, b) => placeOf(a) - placeOf(b));
    if (!cut) return { tree: undefined, parts: [], ties: [] };
    const closes = cut === way || driven.length > 0;
    const tree = closes && own.length === 1 && edges.length > 1 ? treeOf(cut, edges) : undefined;
    const { groups, joints } = jointed(own);
    const kept = new Set([...joints, ...edges.filter(({ id }) => bent.has(id)).map(({ from }) => from)]);
    const parts = groups
      .toSorted((a, b) => Number(b.includes(cut)) - Number(a.includes(cut)))
      .flatMap((group) => (group.includes(cut) ? closed(cut, group, kept) : reduced(group, kept)));
    return { tree, parts, ties: tiesOf(parts.map(({ from, to }, i) => ({ id: `${i}`, from, to }))) };
  });
}
