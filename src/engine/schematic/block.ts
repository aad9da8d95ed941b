import type { Tree } from '../topology/index.ts';
import type { Caption } from './caption.ts';
import type { Share } from './drawing.ts';
import type { Glyph } from './glyph.ts';
import { textSize } from './text.ts';

/** Which way a chain runs: along (h) a line of the page, or down (v) it. */
export type Axis = 'h' | 'v';

/** What is drawn for a component. */
export interface Part {
  readonly glyph: Glyph;
  readonly caption: Caption;
  /** Voltmeters stand outermost in their group. */
  readonly outermost: boolean;
  /** +1 where the component's current is counted from its `from` to its `to`, −1 for a supply: it delivers out of its `from`. */
  readonly sign: 1 | -1;
}

/** How blocks are measured. */
export interface Measure {
  readonly axis: Axis;
  readonly part: (id: string) => Part;
  /** Label and value on two lines above a symbol; beside one they always are. */
  readonly stacked: boolean;
  /** Whether labels beside a symbol stand at its left. */
  readonly left: boolean;
}

/** A part of the circuit with the room that it needs: `length` along its line, `before` and `after` it to either side. */
export interface Block {
  readonly tree: Tree;
  readonly length: number;
  readonly before: number;
  readonly after: number;
  /** What adds up to its current. */
  readonly carries: readonly Share[];
  readonly parts: readonly Block[];
  /** Where the lines of a parallel group's branches are, from the group's own line. */
  readonly offsets: readonly number[];
}

/** The least length of a component with its wires. */
export const slot = 76;
/** From the ends of a parallel group to its junctions. */
export const pad = 16;
/** Between symbol and text. */
export const gap = 7;
/** A line of text. */
export const line = 17;
/** Half of the widest ribbon with its arrowhead, and a little air. */
const ribbonRoom = 12;

const even = (x: number): number => 2 * Math.ceil(x / 2);

function leaf(tree: Tree & { kind: 'component' }, { axis, part, stacked, left }: Measure): Block {
  const { glyph, caption, sign } = part(tree.id);
  const { labelWidth, valueWidth } = caption;
  const clear = Math.max(glyph.half + 4, ribbonRoom + 2);
  const common = {
    tree,
    carries: [{ id: tree.id, sign: tree.reversed === sign < 0 ? 1 : -1 } as const],
    parts: [],
    offsets: [],
  };
  const widest = Math.max(labelWidth, valueWidth);
  if (axis === 'v') {
    const text = even(glyph.half + gap + widest + 6);
    return { ...common, length: slot, before: left ? text : clear, after: left ? clear : text };
  }
  const lines = stacked && valueWidth > 0 ? 2 : 1;
  const width = stacked || valueWidth === 0 ? widest : labelWidth + textSize / 2 + valueWidth;
  return {
    ...common,
    length: Math.max(slot, even(width + 20)),
    before: even(glyph.half + gap + lines * line),
    after: clear,
  };
}

/** Even spacing where the branches are alike; else each as close as it may. */
function spread(rows: readonly Block[]): number[] {
  const steps = rows.slice(1).map((row, i) => even((rows[i]?.after ?? 0) + row.before));
  const widest = Math.max(...steps);
  const alike = widest <= 1.5 * Math.min(...steps);
  let at = 0;
  return [0, ...steps.map((step) => (at += alike ? widest : step))];
}

function parallel(tree: Tree & { kind: 'parallel' }, measure: Measure, hanging: boolean): Block {
  const isOuter = (part: Tree): boolean => part.kind === 'component' && measure.part(part.id).outermost;
  const inner = tree.parts.filter((part) => !isOuter(part));
  const outer = tree.parts.filter(isOuter);
  const rows = [...inner, ...outer].map((part) => blockOf(part, measure));
  const places = spread(rows);
  // An odd number of branches has a middle one, in line with the group; between an even number the line runs free.
  const last = Math.max(0, inner.length - 1) / 2;
  const middle = ((places[Math.floor(last)] ?? 0) + (places[Math.ceil(last)] ?? 0)) / 2;
  const rail = hanging ? 0 : even(middle);
  return {
    tree,
    length: Math.max(...rows.map((row) => row.length)) + 2 * pad,
    before: Math.max(...rows.map((row, i) => row.before + rail - (places[i] ?? 0))),
    after: Math.max(...rows.map((row, i) => row.after - rail + (places[i] ?? 0))),
    carries: rows.flatMap((row) => row.carries),
    parts: rows,
    offsets: places.map((place) => place - rail),
  };
}

/** The lengths that blocks in series take: the same for all where they are alike. */
export function slots(parts: readonly Block[]): number[] {
  const lengths = parts.map(({ length }) => length);
  const longest = Math.max(...lengths);
  return longest <= 1.3 * Math.min(...lengths) ? lengths.map(() => longest) : lengths;
}

/** Blocks in series, as one. */
export function chain(tree: Tree, parts: readonly Block[]): Block {
  const fewest = Math.min(...parts.map((part) => part.carries.length));
  return {
    tree,
    length: slots(parts).reduce((sum, length) => sum + length, 0),
    before: Math.max(0, ...parts.map((part) => part.before)),
    after: Math.max(0, ...parts.map((part) => part.after)),
    carries: parts.find((part) => part.carries.length === fewest)?.carries ?? [],
    parts,
    offsets: [],
  };
}

/** The block of a part of the circuit; a `hanging` parallel group has its first branch on its own line. */
export function blockOf(tree: Tree, measure: Measure, hanging = false): Block {
  switch (tree.kind) {
    case 'component':
      return leaf(tree, measure);
    case 'series':
      return chain(
        tree,
        tree.parts.map((part) => blockOf(part, measure)),
      );
    case 'parallel':
      return parallel(tree, measure, hanging);
  }
}
