import { quantity, type Fraction, type Quantity } from '../quantity/index.ts';
import type { Diode, Lamp, Load } from './model.ts';

/** The resistance that is stated, or that follows from two ratings. */
export function ratedResistance(rated: Lamp | Load): Fraction | undefined {
  if (rated.resistance) return rated.resistance.value;
  const [volts, watts, amperes] = [rated.ratedVoltage, rated.ratedPower, rated.ratedCurrent].map(
    (rating) => rating?.value,
  );
  if (volts && watts) return volts.mul(volts).div(watts);
  if (volts && amperes) return volts.div(amperes);
  return watts && amperes ? watts.div(amperes.mul(amperes)) : undefined;
}

/** The forward p.d. of a diode and its current there; where nothing is written, of a silicon diode and of a red LED (common practice). */
export function forwardPoint({ kind, forwardVoltage, ratedCurrent }: Diode): readonly [Quantity, Quantity] {
  const [volts, amperes] = kind === 'led' ? [2, '0.02'] : ['0.7', '0.01'];
  return [forwardVoltage ?? quantity(volts, 'V'), ratedCurrent ?? quantity(amperes, 'A', 'm')];
}
