import type { Measure } from '../block.ts';
import { barsOf, type Bar } from './bars.ts';
import { columnsOf } from './columns.ts';
import { rowsOf } from './rows.ts';
import { roomOf, stretchesOf, type Stretch } from './stretch.ts';
import { upright, type Upright } from './upright.ts';
import type { Web } from './web.ts';

/** A web with places: every vertex a rail, every edge a column between two rails or a bar on the line of both. */
export interface Layout {
  readonly web: Web;
  readonly graph: Upright;
  readonly measure: Measure;
  readonly bars: readonly Bar[];
  readonly stretches: readonly (Stretch | undefined)[];
  /** How far along the columns each vertex is, and the last of them. */
  readonly rows: readonly number[];
  readonly length: number;
  /** How far to the side each column is, and the room of all. */
  readonly columns: readonly number[];
  readonly breadth: number;
}

/** How a web may be laid out. */
export interface Choice {
  readonly mirrored: boolean;
  /** The greatest difference of heights that a bar may have. */
  readonly steepest: number;
}

/** Lays a web out; undefined where its bars stand in each other's way. */
export function layoutOf(web: Web, measure: Measure, { mirrored, steepest }: Choice): Layout | undefined {
  const graph = upright(web, mirrored);
  const { strands } = web;
  const isOne = (edge: number): boolean => {
    const part = graph.edges[edge]?.part ?? -1;
    const strand = strands[part];
    const alone = graph.edges.filter((each) => each.part === part).length === 1;
    return alone && strand?.kind === 'part' && strand.tree.from !== strand.tree.to;
  };
  const { bars, rows: joined } = barsOf(graph, isOne, steepest);
  const level = new Set(bars.map(({ edge }) => edge));
  const beside = (faces: readonly number[], edge: number): boolean =>
    bars.some((bar) => [graph.left[bar.edge], graph.right[bar.edge]].includes(faces[edge]));
  const stretches = stretchesOf(web, (edge) =>
    level.has(edge)
      ? { ...measure, upright: !measure.upright }
      : { ...measure, left: edge === 0 || (beside(graph.right, edge) && !beside(graph.left, edge)) },
  );
  const rooms = stretches.map(roomOf);
  const across = columnsOf(graph, bars, rooms);
  const along = rowsOf(graph, bars, joined, rooms);
  return across && along && { web, graph, measure, bars, stretches, ...across, ...along };
}
