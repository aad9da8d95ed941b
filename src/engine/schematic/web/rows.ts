import { ribbonRoom } from '../block.ts';
import type { Bar, Rows } from './bars.ts';
import { spaced, type Distance } from './spacing.ts';
import type { Room } from './stretch.ts';
import type { Upright } from './upright.ts';

/** The faces over and under a bar: over what falls towards its right end is what stood at the right of it. */
function facesOf({ top, left, right }: Upright, bar: Bar): { over: number; under: number } {
  const [west = 0, east = 0] = [left[bar.edge], right[bar.edge]];
  return top[bar.edge] === bar.left ? { over: east, under: west } : { over: west, under: east };
}

/** Where the rails lie: as far from each other as the columns between them are long, with room in every face for the bars over and under it. */
export function rowsOf(
  graph: Upright,
  bars: readonly Bar[],
  joined: Rows,
  rooms: readonly Room[],
): { rows: number[]; length: number } | undefined {
  const { edges, heights, top, bottom, left, right, faces } = graph;
  const level = new Set(bars.map(({ edge }) => edge));
  const placed = bars.map((bar) => ({
    row: joined.of(bar.left),
    ...facesOf(graph, bar),
    before: rooms[bar.edge]?.before ?? 0,
    after: rooms[bar.edge]?.after ?? 0,
  }));
  /** The room that bars take in a face, under the row `from` and over the row `to`. */
  const taken = (face: number, from: number, to: number): number =>
    Math.max(0, ...placed.map(({ row, under, after }) => (under === face && row === from ? after : 0))) +
    Math.max(0, ...placed.map(({ row, over, before }) => (over === face && row === to ? before : 0)));
  const distances: Distance[] = [];
  edges.forEach((_, edge) => {
    if (level.has(edge)) return;
    const [from, to] = [joined.of(top[edge] ?? -1), joined.of(bottom[edge] ?? -1)];
    const beside = [left[edge] ?? 0, right[edge] ?? 0].map((face) => taken(face, from, to) + ribbonRoom + 4);
    distances.push([from, to, Math.max(rooms[edge]?.length ?? 0, ...beside)]);
  });
  for (let face = 1; face < faces; face++) {
    const around = edges.flatMap((_, edge) =>
      left[edge] === face || right[edge] === face ? [top[edge] ?? -1, bottom[edge] ?? -1] : [],
    );
    const byHeight = around.sort((a, b) => (heights[b] ?? 0) - (heights[a] ?? 0));
    const [from, to] = [joined.of(byHeight[0] ?? -1), joined.of(byHeight.at(-1) ?? -1)];
    if (from !== to) distances.push([from, to, taken(face, from, to) + 2 * ribbonRoom + 4]);
  }
  const places = spaced(heights.length, distances);
  return (
    places && {
      rows: heights.map((_, vertex) => places[joined.of(vertex)] ?? 0),
      length: Math.max(...places),
    }
  );
}
