import { line, ribbonRoom, type Block, type Part } from '../block.ts';
import type { PlacedLabel, Turn, WrittenQuantity } from '../drawing.ts';
import { turned } from '../glyph.ts';
import { labelAt } from '../label.ts';
import { boxOn, pointOn, type Line } from '../page.ts';
import { labelWidth, textWidth } from '../text.ts';
import { labelSide, lineAway, space, textAway } from './room.ts';

/** Half of the line of a p.d., and of its arrowheads' breadth. */
const half = 30;
const breadth = 3;

/** The arrowhead of a current, and the two of a p.d. with the line between them, along a level wire. */
const head = 'M6,0L-6,-5L-6,5Z';
const span = 'M-25,0L25,0';
const heads = 'M-30,0L-21,-3L-21,3ZM30,0L21,-3L21,3Z';

/** The text of a quantity: its symbol, and what follows. */
function textAt(
  { name, text, reading }: WrittenQuantity,
  x: number,
  baseline: number,
  anchor: PlacedLabel['anchor'],
): PlacedLabel[] {
  const width = labelWidth(text);
  if (reading === '') return [labelAt(name, 'quantity', [x, baseline, anchor], text, width)];
  const whole = width + space + textWidth(reading);
  const split = Math.round(x + width - { start: 0, middle: whole / 2, end: whole }[anchor]);
  return [
    labelAt(name, 'quantity', [split, baseline, 'end'], text, width),
    labelAt(name, 'reading', [split + space, baseline, 'start'], reading, textWidth(reading)),
  ];
}

function placeCurrent(quantity: WrittenQuantity, block: Block, on: Line, along: number): void {
  const { page, measure, way } = on;
  const { upright } = measure;
  const at = pointOn(on, along);
  const flows = way * (block.carries[0]?.sign ?? 1) > 0;
  const turn = ((upright ? 90 : 0) + (flows ? 0 : 180)) as Turn;
  const box = boxOn(on, along - 6, along + 6, 5, 5);
  page.arrows.push({ name: quantity.name, kind: 'current', at, path: '', filled: turned(head, turn), box });
  const side = labelSide(measure);
  page.labels.push(
    ...(upright
      ? textAt(quantity, at.x + side * ribbonRoom, at.y + 5, side > 0 ? 'start' : 'end')
      : textAt(quantity, at.x, at.y - ribbonRoom - 4, 'middle')),
  );
}

function placeVoltage(quantity: WrittenQuantity, away: number, on: Line, middle: number): void {
  const { page, measure } = on;
  const { upright } = measure;
  const side = -labelSide(measure);
  const at = pointOn(on, middle, side * away);
  const turn = upright ? 90 : 0;
  page.arrows.push({
    name: quantity.name,
    kind: 'voltage',
    at,
    path: turned(span, turn),
    filled: turned(heads, turn),
    box: boxOn(on, middle - half, middle + half, breadth - side * away, breadth + side * away),
  });
  page.labels.push(
    ...(upright
      ? textAt(quantity, at.x + side * textAway, at.y + 5, side > 0 ? 'start' : 'end')
      : textAt(quantity, at.x, at.y + line, 'middle')),
  );
}

/** Writes what is asked for beside a component whose symbol has its middle so far along a line. */
export function place(block: Block, { glyph, quantities }: Part, on: Line, middle: number): void {
  for (const quantity of quantities) {
    if (quantity.kind === 'current') placeCurrent(quantity, block, on, middle - (block.lead?.away ?? 0));
    else placeVoltage(quantity, glyph.half + lineAway, on, middle);
  }
}
