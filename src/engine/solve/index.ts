export type { CautionData, FaultData, ReasonData, RemarkData } from './codes.ts';
export type { Caution, ExactSolution, Fault, Readings, Reason, Remark, Solution } from './solution.ts';
