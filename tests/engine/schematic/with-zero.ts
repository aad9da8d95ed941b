import type { Circuit } from '../../../src/engine/circuit/index.ts';

/** The circuit with the 0 V mark at one of its nodes, or, every other time, without. */
export function withZero(circuit: Circuit, by: number): Circuit {
  const nodes = [...new Set(circuit.components.flatMap(({ from, to }) => [from, to]))];
  const zero = by % 2 === 0 ? undefined : nodes[(by >> 1) % nodes.length];
  return zero === undefined ? circuit : { ...circuit, zero };
}
