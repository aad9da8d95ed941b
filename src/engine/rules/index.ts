export { checkRules } from './check-rules.ts';
export type { RuleData } from './codes.ts';
export { ruleLine, type LineStyle, type RuleLine, type Token } from './line.ts';
export type { Equation, Rule, RuleCheck, Term, Value } from './rule-check.ts';
