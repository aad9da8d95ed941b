/** Kirchhoff’s laws, and what may be done with the equations that they give. */
export type Solving =
  | 'currents at a junction'
  | 'e.m.f.s round a loop'
  | 'one alone'
  | 'put in'
  | 'one unknown left'
  | 'put back';

/** What holds for some components only. */
export type Special =
  'rating' | 'balanced bridge' | 'trial supply' | 'no closed path' | 'passed by' | 'whole track';

/** Why a step may be taken. */
export type Reasoning =
  | 'same current'
  | 'same p.d.'
  | 'resistances in series'
  | 'resistances in parallel'
  | 'product over sum'
  | 'trial p.d.'
  | 'p.d.s add'
  | 'currents add'
  | 'potential divider'
  | 'p.d. is current times resistance'
  | 'power'
  | 'power from current'
  | 'power from p.d.'
  | 'power of the e.m.f.'
  | 'power is conserved'
  | 'e.m.f.s in series'
  | 'internal resistance in series'
  | 'e.m.f. round the loop'
  | 'e.m.f. and internal resistance'
  | 'no internal resistance'
  | 'p.d.s round a loop'
  | 'energy and time'
  | 'charge and time'
  | 'energy and charge'
  | Special
  | Solving;

/**
 * What a step says of its rule; `ids` are components and blocks, or `total` for all that is outside the supply, and where equations are
 * solved their numbers and the currents in them; `pd` the class's word for p.d.
 */
export type ReasoningData = Readonly<
  Record<Reasoning, { readonly ids: readonly string[]; readonly pd: string }>
>;

/** An end of a component; `side` is that of a supply. */
export interface Neighbour {
  readonly id: string;
  readonly side: '+' | '−' | '';
}

/** What an explanation says. */
export interface ExplainData extends ReasoningData {
  'look at': { readonly ids: readonly string[] };
  /** A hint: which equation, the same with numbers, what it gives. */
  'hint equation': { readonly equation: string };
  'hint numbers': { readonly equation: string };
  'hint answer': { readonly answer: string };
  /** One more quantity would be enough. */
  'one is missing': { readonly find: string; readonly missing: string };
  'not enough known': { readonly find: string };
  /** Readings that cannot all be right. */
  'readings disagree': { readonly names: readonly string[] };
  /** The class does not use the rule that is needed. */
  'needs a rule': { readonly find: string; readonly rule: string };
  /** Nobody follows the steps of so large a circuit. */
  'too large to explain': { readonly count: number; readonly limit: number };
  /** There would be more equations than anyone solves by hand. */
  'too many equations': { readonly count: number; readonly limit: number };
  /** What no single rule leads to, and the currents that are the unknowns in its place. */
  'equations set up': { readonly find: string; readonly unknowns: readonly string[] };
  /** The way that a current is counted; of a supply’s own, out of its positive end, without neighbours. */
  'current counted': {
    readonly name: string;
    readonly id: string;
    readonly from: readonly Neighbour[];
    readonly to: readonly Neighbour[];
  };
  'flows the other way': { readonly name: string };
  /** Nothing flows through a component: the rest is what it would be without it. */
  'left out': { readonly id: string };
}
