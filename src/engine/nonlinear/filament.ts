import type { Curve } from './curve.ts';

/** The share of its resistance at the rating that a filament has while it is cold (common practice: about a tenth). */
const cold = 0.1;
const rise = 1 - cold;

/**
 * A filament: R = R_rated (0.1 + 0.9 √(V/V_rated)). Round its rating the current grows as V to the 0.55, as lamp makers re-rate
 * lamps (common practice: 0.5 to 0.6); at rest it has a tenth of its resistance.
 */
export function filament(ratedOhms: number, ratedVolts: number): Curve {
  return (volts) => {
    const s = Math.sqrt(Math.abs(volts) / ratedVolts);
    const factor = cold + rise * s;
    const current = volts / (ratedOhms * factor);
    // The integral of 2 s³ / (0.1 + 0.9 s) over s, times V²/R.
    const whole = s ** 3 / (3 * rise) - (cold * s ** 2) / (2 * rise ** 2) + (cold ** 2 * s) / rise ** 3;
    const area = 2 * (whole - (cold ** 3 / rise ** 4) * Math.log1p((rise * s) / cold));
    return {
      current,
      slope: (cold + (rise * s) / 2) / (ratedOhms * factor ** 2),
      area: (area * ratedVolts ** 2) / ratedOhms,
    };
  };
}
