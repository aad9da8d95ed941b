export type { CautionData, FaultData, ReasonData, RemarkData } from './codes.ts';
export { equip, type Solver } from './equip.ts';
export { quantities } from './names.ts';
export type { Caution, ExactSolution, Fault, Readings, Reason, Remark, Solution } from './solution.ts';
export { solve, solveAt, solveExact } from './solve.ts';
export { straightened, type StraightLine, type Straightened } from './straight.ts';
export { track, type Tracker } from './track.ts';
