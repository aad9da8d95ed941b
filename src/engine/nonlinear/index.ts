export type { Curve, CurvePoint } from './curve.ts';
export { curveOf } from './curve-of.ts';
export { curves } from './solve-curves.ts';
