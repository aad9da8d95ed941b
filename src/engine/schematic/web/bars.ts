import type { Upright } from './upright.ts';

/** An edge that is drawn level, between two vertices at one height. */
export interface Bar {
  readonly edge: number;
  /** The vertices at its ends. */
  readonly left: number;
  readonly right: number;
}

/** Vertices at one height, joined by bars. */
export class Rows {
  readonly #row: number[];

  constructor(count: number) {
    this.#row = Array.from({ length: count }, (_, vertex) => vertex);
  }

  /** The number of the row of a vertex. */
  of(vertex: number): number {
    return this.#row[vertex] ?? -1;
  }

  /** Puts the rows of two vertices at one height. */
  join(a: number, b: number): void {
    const [kept, gone] = [this.of(a), this.of(b)];
    this.#row.forEach((row, vertex) => {
      if (row === gone) this.#row[vertex] = kept;
    });
  }
}

/** Whether there is a way down from one row to another but for an edge. */
function leadsDown(
  { edges, top, bottom }: Upright,
  rows: Rows,
  from: number,
  to: number,
  but: number,
): boolean {
  const reached = new Set([from]);
  for (const row of reached) {
    edges.forEach((_, edge) => {
      const [upper, lower] = [rows.of(top[edge] ?? -1), rows.of(bottom[edge] ?? -1)];
      if (edge !== but && upper === row && lower !== row) reached.add(lower);
    });
  }
  return reached.has(to);
}

/**
 * The edges that can be drawn level as well as upright, between vertices that differ by at most so much in height, the most level
 * first: at the outer side of what meets at either end, and with no other way down from one to the other.
 */
export function barsOf(
  graph: Upright,
  isOne: (edge: number) => boolean,
  most: number,
): { bars: Bar[]; rows: Rows } {
  const { edges, heights, above, below, top, bottom, crossings } = graph;
  const rows = new Rows(heights.length);
  const taken = new Set<string>();
  const bars: Bar[] = [];
  const drop = (edge: number): number => (heights[top[edge] ?? -1] ?? 0) - (heights[bottom[edge] ?? -1] ?? 0);
  const level = edges
    .map((_, edge) => edge)
    .filter((edge) => edge !== 0 && isOne(edge) && drop(edge) <= most)
    .sort((a, b) => drop(a) - drop(b) || a - b);
  for (const edge of level) {
    const [upper = -1, lower = -1] = [top[edge], bottom[edge]];
    if (upper >= crossings || lower >= crossings || heights[upper] === 1 || heights[lower] === 0) continue;
    const [outs = [], ins = []] = [below[upper], above[lower]];
    const ends = [
      ...(outs.at(-1) === edge && ins[0] === edge ? [[upper, lower] as const] : []),
      ...(outs[0] === edge && ins.at(-1) === edge ? [[lower, upper] as const] : []),
    ];
    const [end] = ends.filter(([left, right]) => !taken.has(`${left} right`) && !taken.has(`${right} left`));
    if (!end || leadsDown(graph, rows, rows.of(upper), rows.of(lower), edge)) continue;
    const [left, right] = end;
    taken.add(`${left} right`).add(`${right} left`);
    rows.join(upper, lower);
    bars.push({ edge, left, right });
  }
  return { bars, rows };
}
