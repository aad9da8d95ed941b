import { turnedRound, type Piece, type Tree } from '../../topology/index.ts';
import { embed, type Embedding } from './embed.ts';
import { back, edgeOf, type Edge } from './graph.ts';
import { heights } from './heights.ts';

/** What runs between two vertices of a web: a part, a wire back to the node where a part began, or the way outside from one terminal to the other. */
export interface Strand {
  readonly kind: 'part' | 'return' | 'outside';
  /** The part, or the one whose current comes back. */
  readonly tree: Tree;
}

/** A web laid in the plane: the edges of its `strands` run from high to low, but for the first one, which runs from the lowest to the highest vertex. */
export interface Web {
  readonly strands: readonly Strand[];
  readonly embedding: Embedding;
  readonly heights: readonly number[];
}

/** The strands of a piece, and the graph that they make. */
function graphOf({ parts, ties }: Piece): { strands: Strand[]; edges: Edge[]; count: number } {
  const numbers = new Map<string, number>();
  const numberOf = (node: string): number => {
    const number = numbers.get(node) ?? numbers.size;
    numbers.set(node, number);
    return number;
  };
  const strands: Strand[] = [];
  const edges: Edge[] = [];
  for (const tree of parts) {
    const [from, to] = [numberOf(tree.from), numberOf(tree.to)];
    const [node = '', own] = tree.to.split('\n');
    const outside = tree.kind === 'component' && tree.id === '';
    edges.push({ from, to, part: strands.length });
    strands.push({
      kind: outside ? 'outside' : 'part',
      tree: own === undefined ? tree : { ...tree, to: node },
    });
    if (own === undefined) continue;
    edges.push({ from: to, to: from, part: strands.length });
    strands.push({ kind: 'return', tree: { ...tree, to: node } });
  }
  for (const [from, to] of ties) edges.push({ from: numberOf(from), to: numberOf(to), part: -1 });
  return { strands, edges, count: numbers.size };
}

/** Turns strands round that run from low to high, and the first one, which closes the web. */
function turned({ strands, embedding, heights: at }: Web): Web {
  const { edges, faces } = embedding;
  const rises = strands.map(({ kind, tree }, strand) => {
    const own = edges.filter(({ part }) => part === strand);
    const isFirst = (edge: Edge): boolean => own.every(({ to }) => to !== edge.from);
    const isLast = (edge: Edge): boolean => own.every(({ from }) => from !== edge.to);
    const [from, to] = [own.find(isFirst)?.from ?? 0, own.find(isLast)?.to ?? 0];
    // What comes back to where the first strand began follows it.
    if (strand === 0 || (strand === 1 && kind === 'return')) return true;
    return kind === 'part' && tree.from !== tree.to && (at[from] ?? 0) < (at[to] ?? 0);
  });
  const turns = (edge: number): boolean => rises[edges[edge]?.part ?? -1] ?? false;
  return {
    strands: strands.map((strand, place) =>
      rises[place] ? { ...strand, tree: turnedRound(strand.tree) } : strand,
    ),
    embedding: {
      ...embedding,
      edges: edges.map((edge, number) => (turns(number) ? { ...edge, from: edge.to, to: edge.from } : edge)),
      faces: faces.map((face) => face.map((dart) => (turns(edgeOf(dart)) ? back(dart) : dart))),
    },
    heights: at,
  };
}

/** Lays a piece of a circuit in the plane. */
export function webOf(piece: Piece): Web {
  const { strands, edges, count } = graphOf(piece);
  const embedding = embed(edges, count);
  return turned({ strands, embedding, heights: heights(embedding) });
}
