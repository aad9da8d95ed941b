import { isPoint, type Condition } from '../circuit/index.ts';
import type { Parallel, Series, Single, Tree } from '../topology/index.ts';
import type { Caption } from './caption.ts';
import type { Box, DrawingStyle, QuantityArrow, RibbonRun, Share, WrittenQuantity } from './drawing.ts';
import type { Fork, PlaceFork } from './fork/index.ts';
import type { Glyph } from './glyph.ts';
import type { Line } from './page.ts';
import { labelWidth, textSize } from './text.ts';
import type { PlaceWiper, Tap } from './wiper/index.ts';
import { markReach, markText, markWidth } from './zero-mark.ts';

/** What is drawn for a component. */
export interface Part {
  readonly glyph: Glyph;
  readonly caption: Caption;
  /** Voltmeters stand outermost in their group. */
  readonly outermost: boolean;
  /** Whether it is closed, if it is a contact of a changeover switch. */
  readonly contact: boolean | undefined;
  /** In which symbols it is drawn, if it is a part of a potentiometer. */
  readonly track: DrawingStyle['symbols'];
  /** Whether it is a supply, whose current is what it delivers out of its `from`. */
  readonly supplies: boolean;
  /** What has been done to it. */
  readonly condition: Condition | undefined;
  /** Of the 0 V mark what flows along its wire, counted as it is. */
  readonly mark: readonly Share[] | undefined;
  /** What is to be written beside it. */
  readonly quantities: readonly WrittenQuantity[];
}

/** How blocks are measured, and then drawn. */
export interface Measure {
  readonly part: (id: string) => Part;
  /** Whether their lines run down the page rather than along a line of text. */
  readonly upright: boolean;
  /** Label and value on two lines above a symbol; beside one they always are. */
  readonly stacked: boolean;
  /** Whether labels beside a symbol stand at its left. */
  readonly left: boolean;
}

/** A part of the circuit with the room that it needs: `length` along its line, `before` and `after` it to either side. */
export interface Block {
  readonly kind: Tree['kind'];
  /** The component, if it is one. */
  readonly single?: Single;
  readonly from: string;
  readonly to: string;
  readonly length: number;
  readonly before: number;
  readonly after: number;
  /** How far its line is from that of the parallel group that it is a branch of. */
  readonly offset: number;
  /** What adds up to its current: of a component its own, and that of the wire across it. */
  readonly carries: readonly Share[];
  readonly parts: readonly Block[];
  /** The changeover switches that lead into the two branches of a group, and out of them. */
  readonly start?: Fork;
  readonly end?: Fork;
  /** The potentiometer that it is, with what its contact leads to. */
  readonly tap?: Tap;
  /** The wire before a component on which the arrow of its current stands. */
  readonly lead?: Lead;
}

/** How long a wire is, and how far its arrow is from the middle of the symbol after it; 0 where there is none. */
export interface Lead {
  readonly length: number;
  readonly away: number;
}

/** The least length of a component with its wires. */
const slot = 76;
/** The length of a changeover switch with its wires. */
export const forkLength = 76;
/** From the ends of a parallel group to its junctions, where they have no letters. */
const pad = 16;
/** Between symbol and text. */
export const gap = 7;
/** A line of text. */
export const line = 17;
/** Half of the widest ribbon with its arrowhead, and a little air. */
export const ribbonRoom = 12;

/** The next even number: what is drawn lies on a grid of 2 pixels. */
export const even = (x: number): number => 2 * Math.ceil(x / 2);

/** What a part's line is longer by at either end, so that the letters of labelled points have room beside it. */
export const letterRoom = ({ from, to }: { readonly from: string; readonly to: string }): number =>
  Math.max(0, ...[from, to].filter(isPoint).map((node) => even(labelWidth(node) + 4)));

/** From the ends of a parallel group to its junctions. */
export const padOf = (group: { readonly from: string; readonly to: string }): number =>
  pad + letterRoom(group);

/** The largest of something over some blocks; 0 over none. */
export const largest = (blocks: readonly Block[], of: (block: Block) => number): number =>
  Math.max(0, ...blocks.map(of));

/** The piece of wire with the 0 V mark, which turns away from the labels of a level line, and to those of an upright one. */
function markBlock(single: Single, carries: readonly Share[], { upright, left }: Measure): Block {
  const { from, to, reversed } = single;
  const clear = ribbonRoom + 2;
  const aside = upright ? even(markReach + gap + markWidth + 6) : markReach + 4;
  const [before, after] = upright && left ? [aside, clear] : [clear, aside];
  const turned = (sign: Share['sign']): Share['sign'] => (sign === 1 ? -1 : 1);
  const length = upright ? slot : Math.max(slot, even(2 * (markText + markWidth + 4)));
  return {
    kind: 'component',
    single,
    from,
    to,
    length: length + 2 * letterRoom(single),
    before,
    after,
    offset: 0,
    carries: reversed ? carries.map(({ id, sign }) => ({ id, sign: turned(sign) })) : carries,
    parts: [],
  };
}

/** Writes quantities beside components: it stands in a file of its own, loaded where some are asked for. */
export interface QuantityDrawer {
  /** A component's block with the room for what is written beside it. */
  readonly withRoom: (block: Block, part: Part, measure: Measure) => Block;
  /** The branches of a group with their components in line. */
  readonly inLine: (rows: readonly Block[]) => readonly Block[];
  /** Writes it beside the component whose symbol has its middle so far along a line. */
  readonly place: (block: Block, part: Part, on: Line, middle: number) => void;
  /** Ribbons whose arrowheads are clear of the arrows of currents. */
  readonly apart: (
    runs: readonly RibbonRun[],
    arrows: readonly QuantityArrow[],
    symbols: readonly Box[],
  ) => readonly RibbonRun[];
}

let quantityDrawer: QuantityDrawer | undefined;

/** What writes quantities, once it has come. */
export const quantitiesDrawer = (): QuantityDrawer | undefined => quantityDrawer;

/** Makes `drawSchematic` write the quantities that its style asks for. */
export function equipQuantities(drawer: QuantityDrawer): void {
  quantityDrawer = drawer;
}

function component(single: Single, measure: Measure): Block {
  const { part, upright, stacked, left } = measure;
  const { id, from, to } = single;
  const { glyph, caption, mark } = part(id);
  if (mark) return markBlock(single, mark, measure);
  const { labelWidth, valueWidth } = caption;
  const clear = Math.max(glyph.half + 4, ribbonRoom + 2);
  const widest = Math.max(labelWidth, valueWidth);
  const beside = even(glyph.half + gap + widest + 6);
  const lines = stacked && valueWidth > 0 ? 2 : 1;
  const width = stacked || valueWidth === 0 ? widest : labelWidth + textSize / 2 + valueWidth;
  const [before, after] = !upright
    ? [even(glyph.half + gap + lines * line), clear]
    : left
      ? [beside, clear]
      : [clear, beside];
  const block: Block = {
    kind: 'component',
    single,
    from,
    to,
    length: (upright ? slot : Math.max(slot, even(width + 16))) + 2 * letterRoom(single),
    before,
    after,
    offset: 0,
    carries: sharesOf(single, part(id)),
    parts: [],
  };
  return quantityDrawer?.withRoom(block, part(id), measure) ?? block;
}

/** A component's own current along the line, and that of the wire across it. */
export const sharesOf = ({ id, reversed }: Single, { supplies, condition }: Part): readonly Share[] => [
  { id, sign: reversed === supplies ? 1 : -1 },
  ...(condition === 'bridged' ? [{ id: `${id} bridge`, sign: reversed ? -1 : 1 } as const] : []),
];

/** The branches with their offsets: even spacing where they are alike, else each as close as it may. */
export function spread(rows: readonly Block[]): Block[] {
  const steps = rows.map(({ before }, i) => even(before + (rows[i - 1]?.after ?? 0)));
  const [, ...between] = steps;
  const widest = Math.max(...between);
  const alike = widest <= 1.5 * Math.min(...between);
  let offset = 0;
  return rows.map((row, i) => {
    if (i > 0) offset += alike ? widest : (steps[i] ?? 0);
    return { ...row, offset };
  });
}

/** Draws changeover switches as symbols of three terminals: it stands in a file of its own, loaded where there are some. */
export interface ForkDrawer {
  /** A group with branches that a changeover switch leads into or out of; undefined where there are none. */
  readonly blockOf: (tree: Parallel, measure: Measure, hanging: boolean) => Block | undefined;
  readonly place: PlaceFork;
}

let forks: ForkDrawer | undefined;

/** What draws changeover switches, once it has come. */
export const forkDrawer = (): ForkDrawer | undefined => forks;

/** Makes `drawSchematic` draw changeover switches as symbols of three terminals, not as two contacts that are marked alike. */
export function equipForks(drawer: ForkDrawer): void {
  forks = drawer;
}

/** Draws potentiometers as symbols of three terminals: it stands in a file of its own, loaded where there are some. */
export interface WiperDrawer {
  /** Parts in series, the two that meet at the contact of a potentiometer as one. */
  readonly gather: (parts: readonly Tree[], measure: Measure) => readonly Tree[];
  /** Two such parts; undefined for others. */
  readonly blockOf: (tree: Series, measure: Measure) => Block | undefined;
  readonly place: PlaceWiper;
}

let wipers: WiperDrawer | undefined;

/** What draws potentiometers, once it has come. */
export const wiperDrawer = (): WiperDrawer | undefined => wipers;

/** Makes `drawSchematic` draw potentiometers as symbols of three terminals, not as two resistors. */
export function equipWipers(drawer: WiperDrawer): void {
  wipers = drawer;
}

/** The parts of a series, each to be drawn as one. */
export const partsIn = ({ parts }: Series, measure: Measure): readonly Tree[] =>
  wipers?.gather(parts, measure) ?? parts;

function parallel(tree: Parallel, measure: Measure, hanging: boolean): Block {
  const { parts, from, to } = tree;
  const fork = forks?.blockOf(tree, measure, hanging);
  if (fork) return fork;
  const isOuter = (branch: Tree): boolean => branch.kind === 'component' && measure.part(branch.id).outermost;
  const inner = parts.filter((branch) => !isOuter(branch));
  const plain = [...inner, ...parts.filter(isOuter)].map((branch) => blockOf(branch, measure));
  const rows = spread(quantityDrawer?.inLine(plain) ?? plain);
  // An odd number of branches has a middle one, in line with the group; between an even number the line runs free.
  const middle = Math.max(0, inner.length - 1) / 2;
  const offsets = [Math.floor(middle), Math.ceil(middle)].map((i) => rows[i]?.offset ?? 0);
  const rail = hanging ? 0 : even(offsets.reduce((a, b) => a + b) / 2);
  const branches = rows.map((row) => ({ ...row, offset: row.offset - rail }));
  return {
    kind: 'parallel',
    from,
    to,
    length: largest(branches, ({ length }) => length) + 2 * padOf({ from, to }),
    before: largest(branches, ({ before, offset }) => before - offset),
    after: largest(branches, ({ after, offset }) => after + offset),
    offset: 0,
    carries: branches.flatMap(({ carries }) => carries),
    parts: branches,
  };
}

/** Blocks in series, as one; all as long as the longest where they are alike. Without any it is a wire of `node`. */
export function chain(parts: readonly Block[], node = ''): Block {
  const longest = largest(parts, ({ length }) => length);
  const alike = parts.every(({ length }) => longest <= 1.3 * length);
  const blocks = alike ? parts.map((part) => ({ ...part, length: longest })) : parts;
  const shortest = blocks.reduce<readonly Share[] | undefined>(
    (best, { carries }) => (best && best.length <= carries.length ? best : carries),
    undefined,
  );
  return {
    kind: 'series',
    from: parts[0]?.from ?? node,
    to: parts.at(-1)?.to ?? node,
    length: blocks.reduce((sum, { length }) => sum + length, 0),
    before: largest(blocks, ({ before }) => before),
    after: largest(blocks, ({ after }) => after),
    offset: 0,
    carries: shortest ?? [],
    parts: blocks,
  };
}

/** The block of a part of the circuit; a `hanging` parallel group has its first branch on its own line. */
export function blockOf(tree: Tree, measure: Measure, hanging = false): Block {
  if (tree.kind === 'component') return component(tree, measure);
  if (tree.kind === 'parallel') return parallel(tree, measure, hanging);
  const tapped = wipers?.blockOf(tree, measure);
  return tapped ?? chain(partsIn(tree, measure).map((part) => blockOf(part, measure)));
}
