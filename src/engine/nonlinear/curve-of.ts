import { forwardPoint, ratedResistance, type Curved } from '../circuit/index.ts';
import type { Curve } from './curve.ts';
import { diode } from './diode.ts';
import { filament } from './filament.ts';

/** The emission coefficients n of a silicon diode and of an LED (common practice: 1 to 2). */
const emission = { diode: 1.8, led: 2 } as const;

/** The characteristic of a component along its current. */
export function curveOf(component: Curved): Curve {
  if (component.kind !== 'lamp') {
    const [volts, amperes] = forwardPoint(component).map(({ value }) => Number(value));
    return diode(volts ?? NaN, amperes ?? NaN, emission[component.kind]);
  }
  const ohms = Number(ratedResistance(component) ?? NaN);
  const { ratedVoltage, ratedCurrent, ratedPower } = component;
  const volts = ratedVoltage
    ? Number(ratedVoltage.value)
    : ratedCurrent
      ? Number(ratedCurrent.value) * ohms
      : Math.sqrt(Number(ratedPower?.value ?? NaN) * ohms);
  return filament(ohms, volts);
}
