/** The currents of a circuit that has an answer. Branches and nodes by their numbers in the graph. */
export interface Flow<N> {
  /** Amperes, from tail to head. */
  current(branch: number): N;
  /** Potential of `p` less that of `q`, two nodes of one piece, in volts. */
  between(p: number, q: number): N;
}
