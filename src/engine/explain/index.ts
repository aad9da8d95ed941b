export type { ExplainData, Neighbour, Reasoning } from './codes.ts';
export { lessons } from './courses.ts';
export type { Derivation, HintCode, Step } from './derivation.ts';
export { equipEquations, type Equations, type EquationSetter } from './equations.ts';
export { explain, type Lesson, type Question } from './explain.ts';
export { formulaOf, type Formula } from './formula.ts';
export { heard } from './heard.ts';
export { prepareEquations } from './prepare.ts';
export { workedSolution, type Worked, type WorkedWish } from './worked.ts';
