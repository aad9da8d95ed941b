import { Fraction } from '../quantity/index.ts';
import type { Sensor, Surroundings } from './model.ts';

/** Kelvins: the beta of common thermistors between 25 °C and 85 °C (common practice: 3900 to 4000). */
const beta = 3950;
/** The power of the illuminance with which an LDR's resistance falls (common practice: 0.6 to 0.9). */
const gamma = 0.7;
/** 0 °C in kelvins. */
const icePoint = 273.15;

/** What surroundings are where nothing is said: °C and lx, as which the resistance of a sensor is stated. */
export const usualSurroundings = { temperature: 25, light: 10 } as const;

/**
 * The ohms of a sensor where it stands, to seven figures: a thermistor by the beta equation R = R25 e^(β(1/T − 1/T25)), an LDR by
 * R = R10 (E/10 lx)^−γ.
 */
export function sensedResistance({ kind, resistance }: Sensor, where: Surroundings = {}): Fraction {
  const felt = kind === 'thermistor' ? where.temperature : where.light;
  if (!felt) return resistance.value;
  const at = Number(felt.value);
  const factor =
    kind === 'thermistor'
      ? Math.exp(beta * (1 / (at + icePoint) - 1 / (usualSurroundings.temperature + icePoint)))
      : (at / usualSurroundings.light) ** -gamma;
  return resistance.value.mul(new Fraction(factor.toPrecision(7)));
}
