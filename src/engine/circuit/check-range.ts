import { quantity, writeQuantity, type Fraction } from '../quantity/index.ts';
import { refuse } from './fields.ts';
import type { Range, Resistor } from './model.ts';
import { defaultStep, meets, nearestSetting, settingAt } from './range.ts';

const ohms = (value: Fraction): string => writeQuantity(quantity(value, 'Ω')).text;

/** The nearest setting of a range to a value that is not one; undefined where the value is one. */
function offStep(range: Range, value: Fraction): Fraction | undefined {
  if (range.scale === 'log') return undefined;
  if (range.step && meets(value.sub(range.min.value), range.step.value)) return undefined;
  const setting = settingAt(range, nearestSetting(range, value));
  return setting.equals(value) ? undefined : setting;
}

/**
 * The resistor itself, its range completed by the step that is understood where none is written. Throws CircuitFormatError where
 * the range is empty or its value is not one of its settings.
 */
export function checkRange(resistor: Resistor, path: string): Resistor {
  const { range: written, resistance } = resistor;
  if (!written) return resistor;
  const { min, max } = written;
  const value = resistance.value;
  const outside = (found: Fraction, low: string, high: string): never =>
    refuse(path, { code: 'out of range', data: { found: ohms(found), low, high } });
  if (max.value.compare(min.value) <= 0) outside(max.value, ohms(min.value), '…');
  if (value.compare(min.value) < 0 || value.compare(max.value) > 0)
    outside(value, ohms(min.value), ohms(max.value));
  const step = written.scale ? undefined : (written.step?.value ?? defaultStep(min.value, max.value, value));
  if (!written.scale && !step)
    refuse(path, { code: 'no step fits', data: { low: ohms(min.value), high: ohms(max.value) } });
  const range: Range = step ? { ...written, step: written.step ?? quantity(step, 'Ω', min.prefix) } : written;
  for (const found of [max.value, value]) {
    const near = range.scale && found === max.value ? undefined : offStep(range, found);
    if (near) refuse(path, { code: 'not on a step', data: { found: ohms(found), nearest: ohms(near) } });
  }
  return { ...resistor, range };
}
