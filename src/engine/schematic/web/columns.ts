import type { Bar } from './bars.ts';
import { spaced, type Distance } from './spacing.ts';
import type { Room } from './stretch.ts';
import type { Upright } from './upright.ts';

const middle = (edges: readonly number[]): number | undefined => edges[Math.floor((edges.length - 1) / 2)];

/** The column that comes down to a vertex and the one that goes on in line with it; at a crossing both are of one strand. */
export function inLine(
  { above, below, crossings }: Upright,
  vertex: number,
  isColumn: (edge: number) => boolean,
): number[] {
  const [ins = [], outs = []] = [above[vertex]?.filter(isColumn), below[vertex]?.filter(isColumn)];
  const pair =
    vertex < crossings
      ? [middle(ins), middle(outs)]
      : ins.length === 2
        ? [ins[1], outs[0]]
        : [ins.at(ins.length >> 1), outs.at(outs.length >> 1)];
  return pair.flatMap((edge) => (edge === undefined ? [] : [edge]));
}

/** For each edge the number of its line: columns in line share one. */
function linesOf(graph: Upright, isColumn: (edge: number) => boolean): number[] {
  const lines = graph.edges.map((_, edge) => edge);
  graph.above.forEach((_, vertex) => {
    const [into, on] = inLine(graph, vertex, isColumn);
    if (into === undefined || on === undefined) return;
    const [kept, gone] = [lines[into] ?? into, lines[on] ?? on];
    lines.forEach((line, edge) => {
      if (line === gone) lines[edge] = kept;
    });
  });
  return lines;
}

/**
 * Where the columns stand: between the faces at either side of each, which are free strips from side to side. Method: visibility
 * representations, R. Tamassia and I. G. Tollis, Discrete & Computational Geometry 1 (1986) 321–341, with columns in line as of
 * G. Di Battista, R. Tamassia and I. G. Tollis, Algorithmica 7 (1992) 1–27 (both from memory).
 */
export function columnsOf(
  graph: Upright,
  bars: readonly Bar[],
  rooms: readonly Room[],
): { columns: number[]; breadth: number } | undefined {
  const { edges, above, below, left, right, faces } = graph;
  const level = new Set(bars.map(({ edge }) => edge));
  const isColumn = (edge: number): boolean => !level.has(edge);
  const lines = linesOf(graph, isColumn);
  const face = (number: number): number => (number === -1 ? faces : number);
  const line = (edge: number): number => faces + 1 + (lines[edge] ?? edge);
  const distances = edges.flatMap((_, edge): Distance[] => {
    const room = rooms[edge];
    if (!room || level.has(edge)) return [];
    return [
      [face(left[edge] ?? 0), line(edge), room.before],
      [line(edge), face(right[edge] ?? 0), room.after],
    ];
  });
  const columnsAt = (vertex: number): number[] =>
    [...(above[vertex] ?? []), ...(below[vertex] ?? [])].filter(isColumn);
  for (const bar of bars) {
    for (const near of columnsAt(bar.left)) {
      for (const far of columnsAt(bar.right)) {
        const [from, own, to] = [rooms[near], rooms[bar.edge], rooms[far]];
        const room = (from?.after ?? 0) + (own?.length ?? 0) + (to?.before ?? 0);
        distances.push([line(near), line(far), room]);
      }
    }
  }
  const places = spaced(faces + 1 + edges.length, distances);
  return places && { columns: edges.map((_, edge) => places[line(edge)] ?? 0), breadth: places[faces] ?? 0 };
}
