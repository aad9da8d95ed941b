import type { Measure } from './block.ts';
import type { Box, PlacedLabel, PlacedMark, PlacedSymbol, Point, QuantityArrow, Share } from './drawing.ts';

/** A straight piece of wire of a node, or (without a node) of a symbol, in the direction of its chain. */
export interface Piece {
  readonly node?: string;
  readonly from: Point;
  readonly to: Point;
  readonly carries: readonly Share[];
}

/** What has been drawn so far. */
export interface Page {
  readonly pieces: Piece[];
  readonly symbols: PlacedSymbol[];
  readonly labels: PlacedLabel[];
  /** The 0 V mark, at most one. */
  readonly marks: PlacedMark[];
  /** Where a node's wire crosses another's. */
  readonly hops: { readonly node: string; readonly at: Point }[];
  readonly arrows: QuantityArrow[];
}

/** A line of a page on which blocks are placed: where it begins, whether it runs on or back, and what flows along it. */
export interface Line {
  readonly page: Page;
  readonly measure: Measure;
  readonly start: number;
  readonly cross: number;
  readonly way: 1 | -1;
  readonly carries: readonly Share[];
}

/** The point so far along a line, and so far to its side. */
export function pointOn({ measure, start, cross, way }: Line, along: number, across = 0): Point {
  const [m, c] = [start + way * along, cross + across];
  return measure.upright ? { x: c, y: m } : { x: m, y: c };
}

/** The line from a point of it onwards. */
export const onwards = (on: Line, along: number): Line => ({ ...on, start: on.start + on.way * along });

/** Draws a wire along a line, if it has any length. */
export function wire(on: Line, node: string, from: number, to: number): void {
  if (from === to) return;
  on.page.pieces.push({ node, from: pointOn(on, from), to: pointOn(on, to), carries: on.carries });
}

/** The box on a line from one point along it to another, so far before and after it. */
export function boxOn(on: Line, from: number, to: number, before: number, after: number): Box {
  const [p, q] = [pointOn(on, from, -before), pointOn(on, to, after)];
  const [x, y] = [Math.min(p.x, q.x), Math.min(p.y, q.y)];
  return { x, y, width: Math.abs(p.x - q.x), height: Math.abs(p.y - q.y) };
}
