import type { Fraction } from '../quantity/index.ts';
import type { Said } from '../words/index.ts';
import type { CautionData, FaultData, ReasonData, RemarkData } from './codes.ts';

/** Why a circuit has no single answer. */
export type Fault = Said<keyof FaultData> & { readonly ids: readonly string[] };
/** What is worth knowing of a circuit that has an answer. */
export type Remark = Said<keyof RemarkData> & { readonly ids: readonly string[] };
/** A hazard that the real circuit would have. */
export type Caution = Said<keyof CautionData> & { readonly ids: readonly string[] };
/** Why a quantity has no value here. */
export type Reason = Said<keyof ReasonData>;

/**
 * What solving gives, in SI units; `N` is `number` or an exact `Fraction`. A current is positive from `from` to `to`, a
 * p.d. is potential(from) − potential(to); the current of a supply is what it delivers, out of `from`. A quantity that has no
 * value (in a faulty circuit all but what is given: resistances and e.m.f.s; the p.d. across a part joined to nothing) is undefined;
 * `reason` says why. The live readings are right to a rounding or two of the largest of their kind, and 0 just where that is exact.
 */
export interface Readings<N> {
  readonly status: 'solved' | 'faulty';
  readonly faults: readonly Fault[];
  readonly remarks: readonly Remark[];
  readonly cautions: readonly Caution[];
  /** Volts, against the 0 V mark, else the negative terminal of the first supply. */
  potential(node: string): N | undefined;
  /** Amperes. */
  current(id: string): N | undefined;
  /** Volts. */
  voltage(id: string): N | undefined;
  /** Watts: what a supply delivers at its terminals, what anything else takes in. */
  power(id: string): N | undefined;
  /** Ohms: a component's own resistance, that inside a supply (an open switch has none, nor what is taken out). */
  resistance(id: string): N | undefined;
  /** Ohms outside the one supply, or between the terminals. */
  totalResistance(): N | undefined;
  /** Amperes that the one supply delivers. */
  totalCurrent(): N | undefined;
  /** Any quantity by its name (`I_R1`, `V_p_q`, `R_total`, …). */
  quantity(name: string): N | undefined;
  /** Why `quantity(name)` is undefined, or why there is no current though it is 0 ('no current': on an open branch). */
  reason(name: string): Reason | undefined;
}

/** Floating-point readings. */
export type Solution = Readings<number>;
/** Exact readings. */
export type ExactSolution = Readings<Fraction>;
