export type { Because, BecauseData } from './codes.ts';
export type { Varied } from './free.ts';
export { overTime, type OverTime } from './over-time.ts';
export { sensitivity, type Sensitivity } from './sensitivity.ts';
export { sweep, type Span, type Sweep } from './sweep.ts';
export { maximumPower, thevenin, type BestLoad, type Equivalent } from './thevenin.ts';
export { withinTolerance, type Bounds } from './within-tolerance.ts';
