export type { RuleData } from './codes.ts';
export type { Equation, Rule, RuleCheck, Term } from './rule-check.ts';
