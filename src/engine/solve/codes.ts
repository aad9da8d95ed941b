/** Why a circuit has no single answer. Lists are ids. */
export interface FaultData {
  /** Ideal supplies that all drive the same way round a loop without resistance; the path is the rest of it, in order, a wire across L1 as "L1 bridge". */
  'short circuit': { readonly supplies: readonly string[]; readonly path: readonly string[] };
  /** Ideal supplies that drive against each other round a loop without resistance, and whose e.m.f.s do not cancel. */
  'supplies in contradiction': { readonly supplies: readonly string[] };
  /** Loops without resistance that a current enters: how it shares is not determined. One id alone: with the wire across it. */
  'share undetermined': { readonly ids: readonly string[] };
  /** Something is secretly wrong with a component, which is not named. */
  'not as marked': Record<never, never>;
  /** The current of this supply has no way back; the open switches and broken components that may be to blame, if any. */
  'current without a path': { readonly id: string; readonly at: readonly string[] };
  /** Supplies of constant current that set different currents in one path. */
  'currents in contradiction': { readonly supplies: readonly string[] };
  /** Supplies of the same constant current in one path: any share of the p.d. will do. */
  'p.d. undetermined': { readonly supplies: readonly string[] };
  /** Components whose current is not proportional to their p.d.: they need the solver for curves, and have no exact readings. */
  'not ohmic': { readonly ids: readonly string[] };
  /** The steps towards the readings of these do not end. */
  'not settled': { readonly ids: readonly string[] };
  /** More independent loops than can be solved. */
  'too many loops': { readonly count: number; readonly limit: number };
}

/** What is worth knowing of a circuit that has an answer. */
export interface RemarkData {
  /** No closed path: every current is 0; the open switches and broken components on the way, if any. */
  'open loop': { readonly at: readonly string[] };
  /** Components that conduct in no piece with a supply, while elsewhere a current can flow. */
  'cut off': { readonly ids: readonly string[] };
  /** Nothing joins the voltmeter and this component but each other, so all its current would have to pass the meter. */
  'voltmeter in series': { readonly id: string; readonly other: string };
  /** Ammeters join the ends of these, so what flows goes through the ammeters; `ideal`: all of it. */
  'ammeter across': {
    readonly meters: readonly string[];
    readonly others: readonly string[];
    readonly ideal: boolean;
  };
  /** Like poles of two supplies are joined, and nothing else there. */
  'cells in opposition': { readonly id: string; readonly other: string };
  /** One end, or both, is joined to nothing. */
  'loose end': { readonly id: string; readonly both: boolean };
  /** A fuse that has blown. */
  blown: { readonly id: string };
  /** A fuse of far more than the current that it carries. */
  'fuse too large': { readonly id: string };
  /** A diode whose p.d. is against its direction. */
  'turned against': { readonly id: string };
  /** Taken out: they conduct nothing. */
  broken: { readonly ids: readonly string[] };
  /** With a wire across them. */
  bridged: { readonly ids: readonly string[] };
}

/** Hazards of the real circuit. */
export interface CautionData {
  /** Supplies whose current is limited by nothing but themselves; or hardly by anything else, and is more than a school bench carries. */
  'cell shorted': { readonly supplies: readonly string[] };
  /** Takes more power than its rating; both written with units. */
  'over its rating': { readonly id: string; readonly power: string; readonly rating: string };
  /** A part of a potentiometer carries more than its track may: what the power rating of the whole allows all along it. */
  'track overloaded': {
    readonly id: string;
    readonly current: string;
    readonly most: string;
    readonly rating: string;
  };
  /** A fuse carries more than its rating. */
  'fuse would blow': { readonly id: string; readonly current: string; readonly rating: string };
  /** An LED carries well more than its rated current. */
  'led overloaded': { readonly id: string; readonly current: string; readonly rating: string };
  /** A current is driven into a supply's positive terminal. */
  'driven backwards': { readonly id: string };
  /** An ammeter, or several one after another, straight across a supply, or across several in a chain. */
  'ammeter across a supply': { readonly meters: readonly string[]; readonly supplies: readonly string[] };
  /** More than schools treat as extra-low voltage. */
  'not extra-low voltage': { readonly limit: string };
}

/** Why a quantity has no value, or no current. */
export interface ReasonData {
  'circuit has a fault': Record<never, never>;
  'no such quantity': { readonly name: string; readonly suggestion: string };
  /** A total that has no meaning with several supplies: ask for these instead. */
  'several supplies': { readonly name: string; readonly instead: readonly string[] };
  /** Of a whole potentiometer, whose two parts may carry different currents: ask for theirs. */
  'of two parts': { readonly id: string; readonly instead: readonly string[] };
  'no supply': { readonly name: string };
  /** No conducting path between the ends. */
  'no path': Record<never, never>;
  /** A branch that is open: its current is 0 because nothing can flow. */
  'no current': Record<never, never>;
  /** A voltmeter (or any p.d.) on a part joined to nothing. */
  'no steady reading': Record<never, never>;
  /** What is taken out, an open switch, or an ideal voltmeter: no resistance that is a number. */
  'no finite resistance': { readonly id: string };
}
