/** Why a step may be taken. */
export type Reasoning =
  | 'same current'
  | 'same p.d.'
  | 'resistances in series'
  | 'resistances in parallel'
  | 'product over sum'
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
  | 'energy and charge';

/** What a step says of its rule; `ids` are components and blocks, or `total` for all that is outside the supply; `pd` the class's word for p.d. */
export type ReasoningData = Readonly<
  Record<Reasoning, { readonly ids: readonly string[]; readonly pd: string }>
>;

/** What an explanation says. */
export interface ExplainData extends ReasoningData {
  'look at': { readonly ids: readonly string[] };
  /** One more quantity would be enough. */
  'one is missing': { readonly find: string; readonly missing: string };
  'not enough known': { readonly find: string };
  /** Readings that cannot all be right. */
  'readings disagree': { readonly names: readonly string[] };
  /** The class does not use the rule that is needed. */
  'needs a rule': { readonly find: string; readonly rule: string };
  'needs simultaneous equations': { readonly ids: readonly string[] };
}
