import type { Block } from '../block.ts';
import type { Point, Share } from '../drawing.ts';
import { terminalRadius } from '../network.ts';
import { onwards, pointOn, wire, type Line, type Page } from '../page.ts';
import { place } from '../place.ts';
import type { Bar } from './bars.ts';
import { inLine } from './columns.ts';
import type { Layout } from './layout.ts';
import { roomOf } from './stretch.ts';

/** Where a strand meets a rail: what it brings, or takes if it does not arrive; undefined at a terminal. */
interface Meeting {
  readonly at: number;
  readonly arrives: boolean;
  readonly node: string;
  readonly carries: readonly Share[] | undefined;
  readonly part: number;
}

/** The sum of what meets a rail along a part of it; what comes back cancels. */
function sumOf(meetings: readonly Meeting[], way: 1 | -1): readonly Share[] | undefined {
  const sum = new Map<string, Share>();
  for (const { arrives, carries } of meetings) {
    if (!carries) return undefined;
    for (const { id, sign } of carries) {
      const signed = (arrives ? sign * way : -sign * way) as Share['sign'];
      if (sum.get(id)?.sign === -signed) sum.delete(id);
      else sum.set(id, { id, sign: signed });
    }
  }
  return [...sum.values()];
}

/** Draws the wire along the meetings of a rail, on a line in its own direction. */
function drawRail(meetings: readonly Meeting[], on: Omit<Line, 'carries'>): void {
  const stops = [...new Set(meetings.map(({ at }) => at))].sort((a, b) => a - b);
  stops.slice(1).forEach((stop, i) => {
    const [before, after] = [meetings.filter(({ at }) => at < stop), meetings.filter(({ at }) => at >= stop)];
    const [brought, taken] = [sumOf(before, 1), sumOf(after, -1)];
    const carries = brought && (!taken || brought.length <= taken.length) ? brought : (taken ?? []);
    wire({ ...on, carries }, meetings[0]?.node ?? '', stops[i] ?? stop, stop);
  });
}

/** The edges at a vertex that are no bars. */
const standingAt = ({ graph, bars }: Layout, vertex: number): number[] =>
  [...(graph.above[vertex] ?? []), ...(graph.below[vertex] ?? [])].filter((edge) =>
    bars.every((bar) => bar.edge !== edge),
  );

/** Where an edge meets the rail of a vertex: a column where it stands, a bar at the end of the rail that it goes on from. */
function meetingPoint(layout: Layout, vertex: number, edge: number): number {
  const { stretches, columns, bars } = layout;
  const bar = bars.find((each) => each.edge === edge);
  if (!bar) return columns[edge] ?? 0;
  const standing = standingAt(layout, vertex);
  const drawn = standing.filter((each) => stretches[each]);
  const at = (drawn.length > 0 ? drawn : standing).map((each) => columns[each] ?? 0);
  return vertex === bar.left ? Math.max(...at) : Math.min(...at);
}

/** What meets the rail of a vertex. */
function meetingsAt(layout: Layout, vertex: number): Meeting[] {
  const { graph, stretches, web } = layout;
  const own = [...(graph.above[vertex] ?? []), ...(graph.below[vertex] ?? [])];
  return own.flatMap((edge): Meeting[] => {
    const at = meetingPoint(layout, vertex, edge);
    const arrives = graph.edges[edge]?.to === vertex;
    const stretch = stretches[edge];
    if (stretch) {
      const { from, to, carries, part } = stretch;
      return [{ at, arrives, node: arrives ? to : from, carries, part }];
    }
    const part = graph.edges[edge]?.part ?? -1;
    const strand = web.strands[part];
    if (strand?.kind !== 'outside') return [];
    const { from, to } = strand.tree;
    return [{ at: at + terminalRadius, arrives, node: arrives ? to : from, carries: undefined, part }];
  });
}

/** Draws the rail of every vertex; at a crossing that of one strand, with a hop over the other one. */
function drawRails(page: Page, layout: Layout): void {
  const { graph, measure, rows } = layout;
  rows.forEach((cross, vertex) => {
    const on = { page, measure: { ...measure, upright: !measure.upright }, start: 0, cross, way: 1 } as const;
    const meetings = meetingsAt(layout, vertex);
    if (vertex < graph.crossings) {
      drawRail(meetings, on);
      return;
    }
    const [straight = -1] = inLine(graph, vertex, () => true);
    const rail = meetings.filter(({ part }) => part !== graph.edges[straight]?.part);
    drawRail(rail, on);
    const [first] = rail;
    if (!first || rail.length === meetings.length) return;
    const line = { ...on, carries: [] };
    page.hops.push({ node: first.node, at: pointOn(line, layout.columns[straight] ?? 0) });
  });
}

/** Places a block on a line so far from where this begins and from where it ends. */
function placeBetween(block: Block, on: Line, length: number, near: number, far = near): void {
  wire(on, block.from, 0, near);
  place(block, onwards(on, near), length - near - far);
  wire(on, block.to, length - far, length);
}

/** Places the symbols of a bar clear of the columns at its ends, in the middle where there is the room. */
function placeBar(layout: Layout, block: Block, bar: Bar, on: Line, length: number): void {
  const { stretches, columns } = layout;
  const clear = (vertex: number, side: 'before' | 'after'): number => {
    const end = meetingPoint(layout, vertex, bar.edge);
    const rooms = standingAt(layout, vertex).map((each) => {
      const away = side === 'after' ? end - (columns[each] ?? 0) : (columns[each] ?? 0) - end;
      return roomOf(stretches[each])[side] - away;
    });
    return Math.max(0, ...rooms);
  };
  const [left, right] = [clear(bar.left, 'after'), clear(bar.right, 'before')];
  const both = Math.max(left, right);
  const [near, far] =
    length - 2 * both >= block.length ? [both, both] : on.way > 0 ? [left, right] : [right, left];
  placeBetween(block, on, length, near, far);
}

/** Draws a web as it is laid out, and says where its terminals are. */
export function drawLayout(page: Page, layout: Layout): readonly Point[] {
  const { graph, measure, stretches, rows, columns, bars, web } = layout;
  stretches.forEach((stretch, edge) => {
    if (!stretch) return;
    const { from = -1, to = -1 } = graph.edges[edge] ?? {};
    const bar = bars.find((each) => each.edge === edge);
    const ends = bar
      ? [from, to].map((vertex) => meetingPoint(layout, vertex, edge))
      : [rows[from] ?? 0, rows[to] ?? 0];
    const [start = 0, end = 0] = ends;
    const on: Line = {
      page,
      measure: bar ? { ...measure, upright: !measure.upright } : { ...measure, left: stretch.left },
      start,
      cross: (bar ? rows[from] : columns[edge]) ?? 0,
      way: end > start ? 1 : -1,
      carries: stretch.carries,
    };
    const length = Math.abs(end - start);
    if (!stretch.block) wire(on, stretch.from, 0, length);
    else if (bar) placeBar(layout, stretch.block, bar, on, length);
    else placeBetween(stretch.block, on, length, stretch.clear);
  });
  drawRails(page, layout);
  if (web.strands[0]?.kind !== 'outside') return [];
  const [bottom = -1, top = -1] = [graph.edges[0]?.from, graph.edges[0]?.to];
  return [top, bottom].map((vertex) =>
    pointOn({ page, measure, start: rows[vertex] ?? 0, cross: columns[0] ?? 0, way: 1, carries: [] }, 0),
  );
}
