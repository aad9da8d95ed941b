import type { Curve } from './curve.ts';

/** kT/q at 25 °C, in volts, from the exact constants of the SI (2019). */
export const thermalVoltage: number = (1.380649e-23 * 298.15) / 1.602176634e-19;
/** The share of the forward p.d. that falls across the resistance in series (common practice). */
const inSeries = 0.05;
/** The share of its forward conductance that leaks beside the junction, either way (common practice: some picoamperes a volt). */
const beside = 1e-9;

/**
 * A diode of Shockley's equation with a resistance in series: I = I_s (e^(u/nV_T) − 1), V = u + I R, through its forward point.
 * `emission` is n.
 */
export function diode(forwardVolts: number, forwardAmperes: number, emission: number): Curve {
  const unit = emission * thermalVoltage;
  const ohms = (inSeries * forwardVolts) / ((1 - beside) * forwardAmperes);
  const leak = (beside * forwardAmperes) / forwardVolts;
  const saturation = ((1 - beside) * forwardAmperes) / Math.expm1(((1 - inSeries) * forwardVolts) / unit);

  /** The p.d. across the junction alone: u + R I_s (e^(u/nV_T) − 1) rises and is convex, so Newton's steps from the right fall to its root. */
  function junction(volts: number): number {
    if (volts <= 0) return volts;
    let u = Math.min(volts, unit * Math.log1p(volts / (ohms * saturation)));
    for (let step = 0; step < 50; step++) {
      const drop = ohms * saturation * Math.exp(u / unit);
      const less = (u + drop - ohms * saturation - volts) / (1 + drop / unit);
      u -= less;
      if (!(Math.abs(less) > 1e-15 * u)) break;
    }
    return u;
  }

  return (volts) => {
    const u = junction(volts);
    const through = saturation * Math.expm1(u / unit);
    const steep = (saturation * Math.exp(u / unit)) / unit;
    // Area under the junction's own curve, and under that of the resistance behind it.
    const area = saturation * (unit * Math.expm1(u / unit) - u) + (volts > 0 ? (through ** 2 * ohms) / 2 : 0);
    return {
      current: through + leak * volts,
      slope: steep / (1 + (volts > 0 ? ohms : 0) * steep) + leak,
      area: area + (leak * volts ** 2) / 2,
    };
  };
}
