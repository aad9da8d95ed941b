import { sharedPrefix, thinSpace, writeReading, type Fraction, type Unit } from '../../engine/core.ts';
import type { ClaimNow } from '../../engine/claims/index.ts';
import { figuresOf, type Snapshot } from '../link/index.ts';

const units: readonly string[] = ['V', 'A', 'Ω', 'W'] satisfies readonly Unit[];
const isUnit = (unit: string): unit is Unit => units.includes(unit);

/** Both sides of a claim as they are written, with one prefix where the unit may have one. */
export function sidesText(
  snapshot: Snapshot,
  { left, right, unit }: ClaimNow,
): { readonly left: string; readonly right: string } {
  const figures = figuresOf(snapshot);
  const { decimalSign } = snapshot.course;
  const prefix = isUnit(unit) ? sharedPrefix([left, right], unit, figures) : '';
  const text = (value: Fraction): string => {
    if (isUnit(unit)) return writeReading(value, unit, { figures, prefix, decimalSign }).text;
    const { number } = writeReading(value, 'W', { figures, prefix, decimalSign });
    return unit ? number + thinSpace + unit : number;
  };
  return { left: text(left), right: text(right) };
}
