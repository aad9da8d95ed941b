import { even, line, ribbonRoom, type Block, type Measure, type Part } from '../block.ts';
import type { WrittenQuantity } from '../drawing.ts';
import { labelWidth, textWidth } from '../text.ts';

/** From a component's edge to the line of its p.d., beyond a wire across it. */
export const lineAway = 20;
/** From the line of a p.d. to its text. */
export const textAway = 6;
/** From a symbol to what is written after it. */
export const space = 4;
/** The least wire for the arrow of a current, beside which its text stands, or above which. */
const leads = { upright: 26, level: 34 };

/** The room of a quantity's text. */
export const widthOf = ({ text, reading }: WrittenQuantity): number =>
  labelWidth(text) + (reading === '' ? 0 : space + textWidth(reading));

/** On which side of its line a component's own label stands: after it, or before it. */
export const labelSide = ({ upright, left }: Measure): 1 | -1 => (upright && !left ? 1 : -1);

/** A component's block with more room: a longer wire for the arrow of its current, and the line of its p.d. on the side without its label. */
export function withRoom(block: Block, { glyph, quantities }: Part, measure: Measure): Block {
  if (quantities.length === 0) return block;
  const { upright } = measure;
  const room = (kind: WrittenQuantity['kind']): number =>
    Math.max(0, ...quantities.filter((each) => each.kind === kind).map(widthOf));
  const [current, voltage] = [room('current'), room('voltage')];
  const lead = current > 0 ? (upright ? leads.upright : Math.max(leads.level, even(current + 10))) : 0;
  const named = current > 0 ? ribbonRoom + (upright ? current + textAway : line + 2) : 0;
  const beyond = voltage > 0 ? glyph.half + lineAway + textAway + (upright ? voltage + textAway : line) : 0;
  const [before, after] = labelSide(measure) > 0 ? [beyond, named] : [named, beyond];
  const length = upright ? block.length : Math.max(block.length, even(voltage + 16));
  return {
    ...block,
    length: length + lead,
    before: Math.max(block.before, even(before)),
    after: Math.max(block.after, even(after)),
    ...(lead > 0 && { lead: { length: lead, away: even(length / 2 + (upright ? 8 : lead / 2)) } }),
  };
}

/** Branches that are one component each, all with as much wire before it as the one that has most, so that they stay in line. */
export function inLine(rows: readonly Block[]): readonly Block[] {
  const most = Math.max(...rows.map(({ lead }) => lead?.length ?? 0));
  return rows.map((row) => {
    const { length = 0, away = 0 } = row.lead ?? {};
    if (row.kind !== 'component' || length === most) return row;
    return { ...row, length: row.length - length + most, lead: { length: most, away } };
  });
}
