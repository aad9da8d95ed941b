import { gap, line, type Measure } from './block.ts';
import type { PlacedLabel, Point } from './drawing.ts';
import { textSize } from './text.ts';

type Place = readonly [x: number, baseline: number, anchor: PlacedLabel['anchor']];

/** A line of text that is so wide, at a place. */
export function labelAt(
  id: string,
  role: PlacedLabel['role'],
  [x, baseline, anchor]: Place,
  text: string,
  width: number,
): PlacedLabel {
  const shift = { start: 0, middle: width / 2, end: width }[anchor];
  const box = { x: x - shift, y: baseline - 12, width, height: 16 };
  return { id, role, text, at: { x, y: baseline }, anchor, box };
}

/** The label and the value of a component whose symbol is at a point: above it, or beside it on an upright line. */
export function labelsAt(
  id: string,
  { x, y }: Point,
  { upright, part, stacked, left }: Measure,
): PlacedLabel[] {
  const { glyph, caption } = part(id);
  const { label, value, labelWidth, valueWidth } = caption;
  const away = glyph.half + gap;
  const space = textSize / 2;
  const lift = valueWidth > 0 ? line : 0;
  const places = (): readonly [Place, Place] => {
    if (upright) {
      const [from, anchor] = left ? ([x - away, 'end'] as const) : ([x + away, 'start'] as const);
      const baseline = y + (lift > 0 ? 13 : 5);
      return [
        [from, baseline - lift, anchor],
        [from, baseline, anchor],
      ];
    }
    if (stacked || lift === 0) {
      return [
        [x, y - away - lift, 'middle'],
        [x, y - away, 'middle'],
      ];
    }
    const split = Math.round(x + (labelWidth - valueWidth - space) / 2);
    return [
      [split, y - away, 'end'],
      [split + space, y - away, 'start'],
    ];
  };
  const [first, second] = places();
  const named = labelAt(id, 'label', first, label, labelWidth);
  return lift > 0 ? [named, labelAt(id, 'value', second, value, valueWidth)] : [named];
}
