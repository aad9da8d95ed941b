import { twinOf } from '../../circuit/index.ts';
import type { Single } from '../../topology/index.ts';
import { gap, line, type Block } from '../block.ts';
import type { PlacedLabel, PlacedSymbol, Turn } from '../drawing.ts';
import { moved, ring } from '../glyph.ts';
import { labelAt } from '../label.ts';
import { boxOn, pointOn, type Line } from '../page.ts';
import { textSize } from '../text.ts';
import { apart, around, half } from './tap-block.ts';

/** On which side of the contact along its line: before it, or after it. */
export type Way = -1 | 1;

/** From the contact to the end of a part of the track. */
export const trackReach = 30;
/** From the contact to where a wire across a part joins, along the line. */
export const joint = 38;
/** From the line to the end of the arrow. */
export const stem = 22;
/** From the contact to the middle of a part, and to that of its labels on an upright line. */
const [middle, labelled] = [15, 20];
/** Between label and value. */
const space = textSize / 2;

/** A part of the track round its own middle, the contact at its left: half of a resistor (IEC 60617), or of the zigzag of IEEE 315. */
const outlines = { iec: 'M-15,-8L15,-8L15,8L-15,8', ansi: 'M-15,0L-10,8L0,-8L10,8L15,0' };
/** What is left of it where it is taken out: it stands apart from both its ends. */
const apartOutlines = { iec: 'M-7,-8L7,-8L7,8L-7,8Z', ansi: 'M-7,0L-5,8L0,-8L5,8L7,0' };

/** The sliding contact: an arrow onto the middle of the track (IEC 60617 and IEEE 315; from memory). */
const arrowTip = { iec: 9, ansi: 2 };

/** The symbol of a part of the track; the first one along the line holds the arrow. */
export function symbolOf(
  { id, reversed }: Single,
  way: Way,
  on: Line,
  { before }: Block,
  reach: number,
): PlacedSymbol {
  const { upright, part } = on.measure;
  const { track = 'iec', condition } = part(id);
  const isFirst = way < 0;
  const turn = ((upright ? 90 : 0) + (on.way > 0 === reversed ? 180 : 0)) as Turn;
  const onPage = (path: string): string =>
    moved(path, (u, v) => (upright ? `${v} ${u * on.way}` : `${u * on.way} ${v}`));
  // A zigzag goes on through the contact: half a turn makes one half of it the other.
  const outwards = (path: string): string =>
    moved(path, (u, v) => `${u * way},${track === 'ansi' ? v * way : v}`);
  const isOut = condition === 'broken';
  const isCut = track === 'iec' && part(twinOf(id)).condition === 'broken';
  const [tip, end] = [arrowTip[track], -way * middle];
  const shaft = isFirst ? `M${end},${stem}L${end},${tip + 8}` : '';
  return {
    id,
    at: pointOn(on, way * middle),
    turn,
    path: onPage(outwards((isOut ? apartOutlines : outlines)[track] + (isCut && !isOut ? 'Z' : '')) + shaft),
    filled: isFirst ? onPage(`M${end},${tip}L${end - 4},${tip + 9}L${end + 4},${tip + 9}Z`) : '',
    letter: '',
    ...(condition && { condition }),
    ends: isOut ? onPage(outwards(ring(middle - 2, 2) + ring(4 - middle, 2))) : '',
    box: isFirst ? boxOn(on, -trackReach, -1, half, half) : boxOn(on, 1, trackReach, half, half),
    aside: isFirst ? boxOn(on, -joint, 0, 0, around) : boxOn(on, 0, joint, 0, around),
    hit: boxOn(on, isFirst ? -reach : 0, isFirst ? 0 : reach, before, stem - 2),
  };
}

/** The label and the value of a part: above it, on its side of the contact, or at the left of an upright track. */
export function labelsOf(id: string, way: Way, on: Line): PlacedLabel[] {
  const { upright, part, stacked } = on.measure;
  const { label, value, labelWidth, valueWidth } = part(id).caption;
  const { x, y } = pointOn(on, upright ? way * labelled : 0);
  const away = half + gap;
  const isValued = valueWidth > 0;
  const written = (role: PlacedLabel['role'], at: number, baseline: number, anchor: 'start' | 'end') =>
    labelAt(
      id,
      role,
      [at, baseline, anchor],
      role === 'label' ? label : value,
      role === 'label' ? labelWidth : valueWidth,
    );
  if (upright) {
    const at = x - away;
    if (!isValued) return [written('label', at, y + 5, 'end')];
    return [written('label', at, y - 4, 'end'), written('value', at, y + 13, 'end')];
  }
  const side = way * on.way;
  const baseline = y - away;
  const anchor = side < 0 ? 'end' : 'start';
  const inner = x + side * apart;
  if (!isValued) return [written('label', inner, baseline, anchor)];
  if (stacked)
    return [written('label', inner, baseline - line, anchor), written('value', inner, baseline, anchor)];
  // Label and value meet, however wide the one or the other is.
  const split = side < 0 ? inner - valueWidth - space : inner + labelWidth;
  return [written('label', split, baseline, 'end'), written('value', split + space, baseline, 'start')];
}
