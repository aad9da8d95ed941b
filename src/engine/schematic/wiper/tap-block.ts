import type { Series, Single, Tree } from '../../topology/index.ts';
import {
  blockOf,
  chain,
  even,
  gap,
  largest,
  letterRoom,
  line,
  padOf,
  ribbonRoom,
  sharesOf,
  spread,
  type Block,
  type Measure,
} from '../block.ts';
import type { Share } from '../drawing.ts';
import { textSize } from '../text.ts';
import { gather, tapOf, type Side } from './tap.ts';

/** Half of the breadth of a track. */
export const half = 8;
/** From the line to where a wire across a part of a track joins the wire of the contact. */
export const around = 30;
/** Half of the space between the labels of the two parts. */
export const apart = 5;

/** One side of a potentiometer's contact, measured. */
export interface Arm {
  readonly single: Single;
  /** The current of its part of the track, and that of the wire across it. */
  readonly shares: readonly Share[];
  /** What is in series with that, away from the contact. */
  readonly rest: Block;
  /** The line of these two, then what is beside them, each with its offset. */
  readonly rows: readonly Block[];
  /** From its far end to the contact. */
  readonly length: number;
  /** From its far end to where its lines part, or where its one line begins. */
  readonly pad: number;
  /** The node at its far end. */
  readonly node: string;
}

/** A potentiometer with what its contact leads to. */
export interface Tap {
  readonly arms: readonly [Arm, Arm];
  /** The node of the contact. */
  readonly contact: string;
  /** From the contact to where what is in series with either part begins. */
  readonly reach: number;
}

/** The room of the labels: how far beside the track they reach, and along it from the contact. */
function labelRoom(ids: readonly string[], { part, stacked, upright }: Measure): readonly [number, number] {
  const captions = ids.map((id) => part(id).caption);
  const widest = Math.max(...captions.flatMap(({ labelWidth, valueWidth }) => [labelWidth, valueWidth]));
  if (upright) return [even(half + gap + widest + 6), 0];
  const widths = captions.map(({ labelWidth, valueWidth }) => labelWidth + textSize / 2 + valueWidth);
  return [
    even(half + gap + (stacked ? 2 : 1) * line),
    even((stacked ? widest : Math.max(...widths)) + apart + 8),
  ];
}

function armOf(side: Side, at: 'start' | 'end', reach: number, beside: number, measure: Measure): Arm {
  const { single, rest: parts, others, whole } = side;
  const node = at === 'end' ? whole.from : whole.to;
  const blocks = (trees: readonly Tree[]): Block[] => trees.map((each) => blockOf(each, measure));
  const isOuter = (each: Tree): boolean => each.kind === 'component' && measure.part(each.id).outermost;
  const rest = chain(blocks(gather(parts, measure)), node);
  const shares = sharesOf(single, measure.part(single.id));
  const own: Block = {
    ...rest,
    length: rest.length + reach,
    before: Math.max(rest.before, beside),
    after: Math.max(rest.after, around + ribbonRoom),
    carries: parts.length > 0 ? rest.carries : shares,
  };
  const ordered = [...others.filter((each) => !isOuter(each)), ...others.filter(isOuter)];
  const pad = others.length > 0 ? padOf({ from: node, to: '' }) : letterRoom({ from: node, to: '' });
  const rows = others.length > 0 ? spread([own, ...blocks(ordered)]) : [own];
  return { single, shares, rest, rows, length: pad + largest(rows, ({ length }) => length), pad, node };
}

/** Two parts of a chain that meet at the contact of a potentiometer, as one block; undefined for others. */
export function tapBlock({ parts, from, to }: Series, measure: Measure): Block | undefined {
  const [before, after, more] = parts;
  const sides = before && after && !more && tapOf(before, after, measure);
  if (!sides) return undefined;
  const [beside, along] = labelRoom(
    sides.map(({ single }) => single.id),
    measure,
  );
  const reach = Math.max(46, along);
  const arms = [
    armOf(sides[0], 'end', reach, beside, measure),
    armOf(sides[1], 'start', reach, beside, measure),
  ] as const;
  const rows = arms.flatMap((arm) => arm.rows);
  const [one, other] = arms.map((arm) => arm.rows.flatMap(({ carries }) => carries));
  return {
    kind: rows.length > 2 ? 'parallel' : 'series',
    from,
    to,
    length: arms[0].length + arms[1].length,
    before: largest(rows, (row) => row.before - row.offset),
    after: largest(rows, (row) => row.after + row.offset),
    offset: 0,
    carries: one && other && one.length <= other.length ? one : (other ?? []),
    parts: rows.slice(0, 1),
    tap: { arms, contact: sides[0].whole.to, reach },
  };
}
