import { gap, line, pad, slots, type Block, type Measure } from './block.ts';
import type { Box, PlacedLabel, PlacedSymbol, Point, Share, Turn } from './drawing.ts';
import { reach } from './glyph.ts';
import { fillsOf, linesOf } from './stroke.ts';
import { textSize } from './text.ts';

/** A straight piece of wire of a node, or (without a node) of a symbol, in the direction of its chain. */
export interface Piece {
  readonly node?: string;
  readonly from: Point;
  readonly to: Point;
  readonly carries: readonly Share[];
}

/** What has been drawn so far. */
export interface Sheet {
  readonly pieces: Piece[];
  readonly symbols: PlacedSymbol[];
  readonly labels: PlacedLabel[];
}

/** A line on the page on which blocks are placed: where it begins, and whether it runs on or back. */
export interface Line {
  readonly measure: Measure;
  readonly start: number;
  readonly cross: number;
  readonly way: 1 | -1;
}

/** The point on a line so far along it, and so far to its side. */
export function pointOn({ measure, start, cross, way }: Line, along: number, across = 0): Point {
  const m = start + way * along;
  const c = cross + across;
  return measure.axis === 'h' ? { x: m, y: c } : { x: c, y: m };
}

/** The box that has two points as its opposite corners. */
export function boxBetween(p: Point, q: Point): Box {
  const x = Math.min(p.x, q.x);
  const y = Math.min(p.y, q.y);
  return { x, y, width: Math.abs(p.x - q.x), height: Math.abs(p.y - q.y) };
}

/** A wire, if it has any length. */
export function wire(sheet: Sheet, node: string, from: Point, to: Point, carries: readonly Share[]): void {
  if (from.x !== to.x || from.y !== to.y) sheet.pieces.push({ node, from, to, carries });
}

type Anchor = PlacedLabel['anchor'];

/** The label and the value of a component whose symbol is at a point. */
function captions(id: string, { x, y }: Point, { axis, part, stacked, left }: Measure): PlacedLabel[] {
  const { glyph, caption } = part(id);
  const { label, value, labelWidth, valueWidth } = caption;
  const text = (role: PlacedLabel['role'], from: number, baseline: number, anchor: Anchor): PlacedLabel => {
    const width = role === 'label' ? labelWidth : valueWidth;
    const shift = anchor === 'start' ? 0 : anchor === 'end' ? width : width / 2;
    const box = { x: from - shift, y: baseline - 12, width, height: 16 };
    return { id, role, text: role === 'label' ? label : value, at: { x: from, y: baseline }, anchor, box };
  };
  const both = (one: PlacedLabel, two: PlacedLabel): PlacedLabel[] => (valueWidth > 0 ? [one, two] : [one]);
  if (axis === 'v') {
    const side = left ? x - glyph.half - gap : x + glyph.half + gap;
    const anchor = left ? 'end' : 'start';
    const top = valueWidth > 0 ? y - 4 : y + 5;
    return both(text('label', side, top, anchor), text('value', side, top + line, anchor));
  }
  const bottom = y - glyph.half - gap;
  if (valueWidth === 0) return [text('label', x, bottom, 'middle')];
  if (stacked) return both(text('label', x, bottom - line, 'middle'), text('value', x, bottom, 'middle'));
  const space = textSize / 2;
  const split = Math.round(x + (labelWidth - valueWidth - space) / 2);
  return both(text('label', split, bottom, 'end'), text('value', split + space, bottom, 'start'));
}

function placeComponent(
  sheet: Sheet,
  block: Block,
  on: Line,
  length: number,
  carries: readonly Share[],
): void {
  const { tree } = block;
  if (tree.kind !== 'component') return;
  const { axis, left, part } = on.measure;
  const { glyph } = part(tree.id);
  const middle = Math.round(length / 2);
  const centre = pointOn(on, middle);
  const [first, last] = [pointOn(on, middle - reach), pointOn(on, middle + reach)];
  const heading = axis === 'h' ? (on.way > 0 ? 0 : 180) : on.way > 0 ? 90 : 270;
  const turn = ((heading + (tree.reversed ? 180 : 0)) % 360) as Turn;
  const shown = glyph.polar ? turn : axis === 'h' ? 0 : left ? 90 : 270;
  sheet.symbols.push({
    id: tree.id,
    at: centre,
    turn,
    path: linesOf(glyph, shown),
    filled: fillsOf(glyph, shown),
    letter: glyph.letter,
    box: boxBetween(pointOn(on, middle - reach, -glyph.half), pointOn(on, middle + reach, glyph.half)),
    hit: boxBetween(pointOn(on, middle - reach, -block.before), pointOn(on, middle + reach, block.after)),
  });
  sheet.labels.push(...captions(tree.id, centre, on.measure));
  wire(sheet, tree.from, pointOn(on, 0), first, carries);
  sheet.pieces.push({ from: first, to: last, carries });
  wire(sheet, tree.to, last, pointOn(on, length), carries);
}

/** One side of a parallel group: the wire along the ends of its branches, which gathers their currents. */
function rail(
  sheet: Sheet,
  node: string,
  { parts, offsets }: Block,
  on: Line,
  along: number,
  out: boolean,
): void {
  const reachOut = (indices: readonly number[]): void => {
    let carries: readonly Share[] = [];
    indices.forEach((i, k) => {
      carries = k === 0 ? (parts[i]?.carries ?? []) : [...(parts[i]?.carries ?? []), ...carries];
      const outer = pointOn(on, along, offsets[i]);
      const inner = pointOn(on, along, k + 1 < indices.length ? offsets[indices[k + 1] ?? 0] : 0);
      if (out) wire(sheet, node, inner, outer, carries);
      else wire(sheet, node, outer, inner, carries);
    });
  };
  const indices = parts.map((_, i) => i);
  reachOut(indices.filter((i) => (offsets[i] ?? 0) < 0));
  reachOut(indices.filter((i) => (offsets[i] ?? 0) > 0).reverse());
}

function placeGroup(
  sheet: Sheet,
  block: Block,
  on: Line,
  length: number,
  carries: readonly Share[],
  whole: boolean,
): void {
  const { tree, parts, offsets } = block;
  const inset = whole ? 0 : Math.round((length - block.length) / 2) + pad;
  wire(sheet, tree.from, pointOn(on, 0), pointOn(on, inset), carries);
  rail(sheet, tree.from, block, on, inset, true);
  parts.forEach((part, i) => {
    const row = { ...on, start: on.start + on.way * inset, cross: on.cross + (offsets[i] ?? 0) };
    place(sheet, part, row, length - 2 * inset, part.carries);
  });
  rail(sheet, tree.to, block, on, length - inset, false);
  wire(sheet, tree.to, pointOn(on, length - inset), pointOn(on, length), carries);
}

/**
 * Places a block on a line, from its start over a length of at least the block's own, with even spaces between its parts. A
 * group that takes the `whole` line has its junctions at the very ends.
 */
export function place(
  sheet: Sheet,
  block: Block,
  on: Line,
  length: number,
  carries: readonly Share[] = block.carries,
  whole = false,
): void {
  if (block.tree.kind === 'component') placeComponent(sheet, block, on, length, carries);
  else if (block.tree.kind === 'parallel') placeGroup(sheet, block, on, length, carries, whole);
  else {
    const lengths = slots(block.parts);
    const space = (length - block.length) / lengths.length;
    const alone = whole && lengths.length === 1;
    let along = 0;
    let ideal = 0;
    block.parts.forEach((part, i) => {
      ideal += (lengths[i] ?? 0) + space;
      const end = Math.round(ideal);
      place(sheet, part, { ...on, start: on.start + on.way * along }, end - along, carries, alone);
      along = end;
    });
  }
}
