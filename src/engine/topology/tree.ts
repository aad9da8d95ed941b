/** One component as a leaf of the tree. */
export interface Single {
  readonly kind: 'component';
  readonly id: string;
  /** True where the component's own `from` is at this leaf's `to`. */
  readonly reversed: boolean;
  readonly from: string;
  readonly to: string;
}

/** Parts one after another, in order from `from` to `to`; no part is itself a series. */
export interface Series {
  readonly kind: 'series';
  readonly parts: readonly Tree[];
  readonly from: string;
  readonly to: string;
}

/** Parts side by side, all between `from` and `to`, in the order of the circuit's components; no part is itself a parallel. */
export interface Parallel {
  readonly kind: 'parallel';
  readonly parts: readonly Tree[];
  readonly from: string;
  readonly to: string;
}

/**
 * How a circuit is put together. A circuit with a supply is a `series` whose first part is the first supply and whose
 * `from` equals its `to`: it closes on itself, in the direction in which that supply drives (so the supply's leaf is
 * `reversed`: it is entered at its negative end). A network without a supply runs from its first terminal to its second.
 */
export type Tree = Single | Series | Parallel;

/** A circuit that is not series and parallel all the way down. */
export interface Irreducible {
  readonly kind: 'irreducible';
  /** Why: a bridge among these components, parts that do not hang together, or components on a dead end. */
  readonly reason: 'bridge' | 'apart' | 'dead end' | 'empty';
  /** The components left where reduction stopped. */
  readonly ids: readonly string[];
}
