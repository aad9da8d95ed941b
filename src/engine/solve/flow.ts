import type { Branch, Node } from './graph.ts';

/** The currents of a circuit that has an answer. */
export interface Flow<N> {
  /** Amperes, from tail to head. */
  current(branch: Branch): N;
  /** Potential of `p` less that of `q`, two nodes of one piece, in volts. */
  between(p: Node, q: Node): N;
}
