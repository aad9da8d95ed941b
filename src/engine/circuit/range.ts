import { Fraction, powerOfTen, preferred, preferredPlace, significant } from '../quantity/index.ts';
import type { Range } from './model.ts';

/** Settings of a range that is even in the logarithm. */
const logSettings = 100;

/** The largest of 1, 2, 5 × 10ⁿ that meets both ends and the value in at least 20 steps; undefined where there is none. */
export function defaultStep(min: Fraction, max: Fraction, value: Fraction): Fraction | undefined {
  const span = max.sub(min);
  const top = Math.floor(Math.log10(span.div(20).valueOf())) + 1;
  for (let power = top; power > top - 24; power--) {
    for (const digit of [5, 2, 1]) {
      const step = powerOfTen(power).mul(digit);
      if (span.div(step).compare(20) >= 0 && meets(span, step) && meets(value.sub(min), step)) return step;
    }
  }
  return undefined;
}

/** Whether a distance is a whole number of steps. */
export function meets(distance: Fraction, step: Fraction): boolean {
  return distance.div(step).d === 1n;
}

/** The number of the last setting, the first being 0. */
export function lastSetting({ min, max, step, scale }: Range): number {
  if (step) return max.value.sub(min.value).div(step.value).floor().valueOf();
  if (scale === 'E12' || scale === 'E24') {
    return preferredPlace(scale, max.value.valueOf()) - firstPlace(scale, min.value);
  }
  return logSettings;
}

/** The value at a setting, exactly. */
export function settingAt({ min, max, step, scale }: Range, setting: number): Fraction {
  if (step) return min.value.add(step.value.mul(setting));
  if (scale === 'E12' || scale === 'E24') {
    const { digits, power } = preferred(scale, firstPlace(scale, min.value) + setting);
    return powerOfTen(power).mul(digits);
  }
  if (setting <= 0) return min.value;
  if (setting >= logSettings) return max.value;
  const ratio = max.value.div(min.value).valueOf() ** (setting / logSettings);
  return new Fraction(significant(min.value.valueOf() * ratio, 3));
}

/** The setting nearest to a value; on a logarithmic scale nearest in ratio. */
export function nearestSetting(range: Range, value: Fraction): number {
  const { min, max, step, scale } = range;
  const last = lastSetting(range);
  const within = (setting: number): number => Math.min(Math.max(setting, 0), last);
  if (step) return within(value.sub(min.value).div(step.value).round().valueOf());
  if (value.compare(min.value) <= 0) return 0;
  if (scale === 'log') {
    const whole = Math.log(max.value.div(min.value).valueOf());
    return within(Math.round((logSettings * Math.log(value.div(min.value).valueOf())) / whole));
  }
  if (scale === undefined) return 0;
  const below = within(preferredPlace(scale, value.valueOf()) - firstPlace(scale, min.value));
  const above = within(below + 1);
  const squared = settingAt(range, below).mul(settingAt(range, above));
  return value.mul(value).compare(squared) > 0 ? above : below;
}

function firstPlace(scale: 'E12' | 'E24', min: Fraction): number {
  const below = preferredPlace(scale, min.valueOf());
  const { digits, power } = preferred(scale, below);
  return powerOfTen(power).mul(digits).compare(min) < 0 ? below + 1 : below;
}
