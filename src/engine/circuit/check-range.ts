import { quantity, writeQuantity, type Fraction, type Quantity } from '../quantity/index.ts';
import { refuse } from './fields.ts';
import type { Range } from './model.ts';
import { defaultStep, meets, nearestSetting, settingAt } from './range.ts';

/** The nearest setting of a range to a value that is not one; undefined where the value is one. */
function offStep(range: Range, value: Fraction): Fraction | undefined {
  if (range.scale === 'log') return undefined;
  if (range.step && meets(value.sub(range.min.value), range.step.value)) return undefined;
  const setting = settingAt(range, nearestSetting(range, value));
  return setting.equals(value) ? undefined : setting;
}

/**
 * The range of a value, completed by the step that is understood where none is written. Throws CircuitFormatError where the range
 * is empty or the value is not one of its settings.
 */
export function checkRange(written: Range, { value, unit }: Quantity, path: string): Range {
  const { min, max } = written;
  const text = (found: Fraction): string => writeQuantity(quantity(found, unit)).text;
  const outside = (found: Fraction, high: string): never =>
    refuse(path, 'out of range', { found: text(found), low: text(min.value), high });
  if (max.value.compare(min.value) <= 0) outside(max.value, '…');
  if (value.compare(min.value) < 0 || value.compare(max.value) > 0) outside(value, text(max.value));
  const step = written.scale ? undefined : (written.step?.value ?? defaultStep(min.value, max.value, value));
  if (!written.scale && !step) refuse(path, 'no step fits', { low: text(min.value), high: text(max.value) });
  const range: Range = step
    ? { ...written, step: written.step ?? quantity(step, unit, min.prefix) }
    : written;
  for (const found of [max.value, value]) {
    const near = range.scale && found === max.value ? undefined : offStep(range, found);
    if (near) refuse(path, 'not on a step', { found: text(found), nearest: text(near) });
  }
  return range;
}
