import type { Rule } from './rule-check.ts';

/** The rules in words; `pd` is the class's word for p.d. */
export type RuleNames = Readonly<Record<Rule, { readonly pd: string }>>;

/** Why a rule applies, or why it does not; and how an equation is said. */
export interface RuleData extends RuleNames {
  /** Components, or blocks, one after another with no junction between. */
  'one path': { readonly ids: readonly string[] };
  /** Components, or blocks, between the same two points. */
  'side by side': { readonly ids: readonly string[] };
  'one junction': { readonly ids: readonly string[] };
  'closed loop': { readonly ids: readonly string[] };
  resists: { readonly ids: readonly string[] };
  'energy is kept': { readonly ids: readonly string[] };

  /** Two neighbours with a junction between. */
  'current splits': { readonly ids: readonly string[] };
  bridge: { readonly ids: readonly string[] };
  /** `ids` are what is taken out. */
  'nothing to add': { readonly ids: readonly string[] };
  /** `ids` are what is taken out; else `open` are the switches each of which would lead a second path. */
  'only one path': { readonly ids: readonly string[]; readonly open: readonly string[] };
  'taken out': { readonly ids: readonly string[] };
  'supply inside': { readonly ids: readonly string[] };
  /** A branch without resistance takes the whole current. */
  bypassed: { readonly ids: readonly string[] };
  'not resistance': { readonly ids: readonly string[] };
  'not driven': Record<never, never>;
  'terminals apart': Record<never, never>;

  /** An operator in words. */
  operator: { readonly sign: '=' | '+' | '−' | '×' | '<' };
  reciprocal: { readonly of: string };
  symbol: { readonly letter: string; readonly of: string };
  unknown: Record<never, never>;
  /** The wire across a bridged component, in the place of a label. */
  'wire across': { readonly id: string };
}
