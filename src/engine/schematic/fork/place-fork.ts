import type { Single } from '../../topology/index.ts';
import { forkLength, sharesOf, type Block } from '../block.ts';
import type { PlacedLabel, PlacedSymbol, Point, Share, Turn } from '../drawing.ts';
import { moved, reach, ring } from '../glyph.ts';
import { labelAt } from '../label.ts';
import { boxOn, pointOn, type Line } from '../page.ts';
import type { Fork } from './fork.ts';
import { contactGap, labelGap } from './fork-block.ts';

/** From the middle of the symbol to where a wire across a contact joins. */
const joint = 30;
/** From the line to a wire across a contact. */
const around = 24;
/** From the middle to the pivot, and to the contacts. */
const arm = 12;

/** The side of its line on which a contact is: the first one before it, the second one after it. */
type Side = -1 | 1;

/** The lines of a contact round its own end; those of the first one hold the pivot and the common terminal too. */
function linesOf(side: Side, closed: boolean, broken: boolean): string {
  const axis = -side * contactGap;
  const common = side < 0 ? `M${-reach},${axis}L-15,${axis}${ring(-arm, 3, axis)}` : '';
  // The blade goes from rim to rim.
  const blade = `M${2 - arm},${axis + 2 * side}L${arm - 2},${-2 * side}`;
  return `${common}${ring(arm, 3)}${broken ? '' : `M15,0L${reach},0`}${closed ? blade : ''}`;
}

function symbolOf(
  { id, reversed }: Single,
  side: Side,
  group: Block,
  on: Line,
  middle: number,
): PlacedSymbol {
  const { contact = false, condition } = on.measure.part(id);
  const { upright } = on.measure;
  const onPage = (path: string): string =>
    moved(path, (u, v) => (upright ? `${v} ${u * on.way}` : `${u * on.way} ${v}`));
  const [before, after] = side < 0 ? [1, 0] : [0, 1];
  return {
    id,
    at: pointOn(on, middle, side * contactGap),
    turn: ((upright ? 90 : 0) + (reversed ? 180 : 0)) as Turn,
    path: onPage(linesOf(side, contact, condition === 'broken')),
    filled: '',
    letter: '',
    ...(condition && { condition }),
    ends: condition === 'broken' ? onPage(ring(reach - 2, 2)) : '',
    box: boxOn(on, middle - reach, middle + reach, 24 * before - 1, 24 * after - 1),
    hit: boxOn(
      on,
      middle - forkLength / 2,
      middle + forkLength / 2,
      group.before * before,
      group.after * after,
    ),
  };
}

/** The label of a contact, on its side of the line. */
function labelOf(id: string, side: Side, { measure }: Line, { x, y }: Point): PlacedLabel {
  const { label, labelWidth } = measure.part(id).caption;
  const away = side * labelGap;
  return measure.upright
    ? labelAt(id, 'label', [x + away, y + 5, side < 0 ? 'end' : 'start'], label, labelWidth)
    : labelAt(id, 'label', [x, y + away + (side < 0 ? -4 : 12), 'middle'], label, labelWidth);
}

/**
 * Places the changeover switch that leads into the branches of a group, which begin `far` along the line; or, on a line that runs back
 * from the end of the group, the one that leads out of them.
 */
export function placeFork(
  fork: Fork,
  group: Block,
  common: string,
  on: Line,
  far: number,
  into: boolean,
): void {
  const { page, measure } = on;
  const middle = far - forkLength / 2;
  const at = (along: number, across: number): Point => pointOn(on, middle + along, across);
  const path = (carries: readonly Share[], points: readonly Point[], node?: string): void => {
    points.slice(1).forEach((next, i) => {
      const last = points[i] ?? next;
      if (last.x === next.x && last.y === next.y) return;
      const ends = into ? { from: last, to: next } : { from: next, to: last };
      page.pieces.push({ ...(node !== undefined && { node }), ...ends, carries });
    });
  };
  const branches = fork.map((contact, place) => {
    const { carries = [], offset = 0 } = group.parts[place] ?? {};
    const [own, aside] = sharesOf(contact, measure.part(contact.id));
    const side: Side = place === 0 ? -1 : 1;
    return { contact, side, carries, offset, aside, own: own && aside ? [own] : carries };
  });
  const isBridged = branches.some(({ aside }) => aside);
  const through = isBridged ? branches.flatMap(({ own }) => own) : on.carries;
  const begin = isBridged ? -joint : -reach;
  path(on.carries, [at(-middle, 0), at(begin, 0)], common);
  path(through, [at(begin, 0), at(-reach, 0)], common);
  path(through, [at(-reach, 0), at(0, 0)]);
  for (const { contact, side, carries, offset, aside, own } of branches) {
    const across = side * contactGap;
    const node = into ? contact.to : contact.from;
    path(own, [at(0, 0), at(0, across), at(reach, across)]);
    path(own, [at(reach, across), at(joint, across)], node);
    path(carries, [at(joint, across), at(forkLength / 2, across), at(forkLength / 2, offset)], node);
    if (aside) {
      const away = side * around;
      const round = [at(-joint, 0), at(-joint, away), at(joint, away), at(joint, across)];
      path([aside], round, `${contact.id} bridge`);
    }
    page.symbols.push(symbolOf(contact, side, group, on, middle));
    page.labels.push(labelOf(contact.id, side, on, at(0, 0)));
  }
}
