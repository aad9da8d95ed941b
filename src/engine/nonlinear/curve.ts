/** A point of a characteristic. */
export interface CurvePoint {
  /** Amperes. */
  readonly current: number;
  /** Siemens: how the current grows with the p.d.; above 0. */
  readonly slope: number;
  /** Watts: the area under the characteristic from 0 V to the point (the co-content: W. Millar 1951). */
  readonly area: number;
}

/** A characteristic: the current grows with the p.d., and is 0 at 0 V. */
export type Curve = (volts: number) => CurvePoint;
