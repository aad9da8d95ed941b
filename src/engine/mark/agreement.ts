import { exponentOf, fixed, Fraction, powerOfTen, scanNumber, type Prefix } from '../quantity/index.ts';
import type { GapMistake } from '../reasons/index.ts';

/** A number with its unit, as it was written or typed. */
interface Reading {
  readonly value: Fraction;
  readonly decimals: number;
  /** Power of ten of the prefix. */
  readonly power: number;
  /** Without its prefix; '' where none stands there. */
  readonly unit: string;
}

const unitPattern = /^([pnµμumkMG]?)(V|A|[Ω\u2126]|ohms?|W|J|C|s)$/;

/** Reads `0.45`, `0,45 A`, `-450 mA`, a comma being a decimal one; undefined where that is no number, and as the unit whatever stands behind it. */
function read(text: string, usual?: Reading): Reading | undefined {
  const plain = text
    .trim()
    .replace(/^[-–−]\s*/, '')
    .replace(',', '.');
  const number = plain.length > 40 ? undefined : scanNumber(plain, 0);
  if (!number || number.trouble) return undefined;
  const rest = plain.slice(number.end).trim();
  const [, prefix = '', unit = rest] = unitPattern.exec(rest) ?? [];
  const power = rest ? exponentOf(prefix.replace(/[μu]/, 'µ') as Prefix) : (usual?.power ?? 0);
  const value = number.value.mul(powerOfTen(power));
  return {
    value: /^[-–−]/.test(text.trim()) ? value.neg() : value,
    decimals: number.decimals,
    power,
    unit: rest ? unit.replace(/^(\u2126|ohms?)$/, 'Ω') : (usual?.unit ?? ''),
  };
}

/**
 * What is wrong with a number that a pupil typed in the place of one that is written, such as "0.450 A"; undefined where it rounds
 * to the same figures. Without a unit it has the written one.
 */
export function agreement(
  typed: string,
  { value, text }: { readonly value: Fraction; readonly text: string },
): GapMistake | undefined {
  const written = read(text);
  const pupil = read(typed, written);
  if (!written || !pupil) return 'not a number';
  if (pupil.unit !== written.unit) return 'unit';
  // A reading of nothing is written "0", without decimals to round to: only nothing is right there.
  const isRight = (of: Fraction): boolean =>
    of.equals(written.value) ||
    (!value.equals(0) &&
      fixed(of, written.decimals, -written.power) === fixed(value, written.decimals, -written.power));
  const near = (a: Fraction, b: Fraction): boolean =>
    a.sub(b).abs().mul(50).compare(b.abs()) <= 0 && !b.equals(0);
  const powers = [1, 2, 3, 4, 5, 6, 9].flatMap((power) => [power, -power]);
  const tests: readonly (readonly [GapMistake, () => boolean])[] = [
    ['sign', () => isRight(pupil.value.neg())],
    [
      'power of ten',
      () => powers.some((power) => isRight(pupil.value.mul(powerOfTen(power))) && !value.equals(0)),
    ],
    ['rounding', () => near(pupil.value, value)],
    ['upside down', () => !pupil.value.equals(0) && near(pupil.value.inverse(), value)],
  ];
  if (isRight(pupil.value)) return undefined;
  return tests.find(([, applies]) => applies())?.[0] ?? 'other';
}
