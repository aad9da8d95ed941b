import { exponentOf, powerOfTen, type Fraction, type Prefix } from '../quantity/index.ts';

/** The powers of the volt and the ampere in a unit; `isBare` for a number without a unit, which goes with any. */
export interface Dimension {
  readonly volts: number;
  readonly amperes: number;
  readonly isBare?: true;
}

/** No unit: a bare number, or a ratio of like quantities. */
export const bare: Dimension = { volts: 0, amperes: 0, isBare: true };

const dimensions: Readonly<Record<string, Dimension>> = {
  V: { volts: 1, amperes: 0 },
  A: { volts: 0, amperes: 1 },
  Ω: { volts: 1, amperes: -1 },
  W: { volts: 1, amperes: 1 },
};

const letters: Readonly<Record<string, string>> = { V: 'V', E: 'V', I: 'A', R: 'Ω', r: 'Ω' };

/** The dimension of a quantity, by its name. */
export const dimensionOf = (name: string): Dimension => {
  const unit = letters[name.slice(0, name.indexOf('_'))] ?? 'W';
  return dimensions[unit] ?? bare;
};

/** Whether two values may be added or compared. */
export const agree = (a: Dimension, b: Dimension): boolean =>
  Boolean(a.isBare ?? b.isBare) || (a.volts === b.volts && a.amperes === b.amperes);

/** A power as textbooks write it; the first is not written. */
const raised = (power: number): string =>
  power === 1 ? '' : String(power).replace(/\d/g, (digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'.charAt(Number(digit)));

/** A dimension as a unit: "V", "Ω", "V²/A" where it has no name of its own; '' for none. */
export function unitOf({ volts, amperes }: Dimension): string {
  if (!volts && !amperes) return '';
  const known = Object.entries(dimensions).find(
    ([, each]) => each.volts === volts && each.amperes === amperes,
  );
  if (known) return known[0];
  const powers = [
    ['V', volts],
    ['A', amperes],
  ] as const;
  const side = (sign: 1 | -1): string =>
    powers
      .filter(([, power]) => power * sign > 0)
      .map(([unit, power]) => unit + raised(Math.abs(power)))
      .join(' ');
  return (side(1) || '1') + (side(-1) && `/${side(-1)}`);
}

const unit = /\s*(p|n|[uµμ]|m|k|M|G)?(V|A|W|[Ω\u2126]|ohms?)(?![\p{L}\d_])/uy;

/** The unit that stands at a place in a text: what a number there is multiplied by; undefined where there is none. */
export function scanUnit(
  text: string,
  at: number,
): { readonly times: Fraction; readonly dimension: Dimension; readonly end: number } | undefined {
  unit.lastIndex = at;
  const [all, prefix = '', name = ''] = unit.exec(text) ?? [];
  if (all === undefined) return undefined;
  const micro = /[uμ]/.test(prefix) ? 'µ' : prefix;
  return {
    times: powerOfTen(exponentOf(micro as Prefix)),
    dimension: dimensions[name] ?? dimensions['Ω'] ?? bare,
    end: at + all.length,
  };
}
