import type { Circuit } from './model.ts';

/** What time has done to a circuit: the ids of the fuses that have blown, in their order. Those that a circuit has blown itself need not be named. */
export interface State {
  readonly blown: readonly string[];
}

/** The circuit with the fuses of a state blown; ids that are no fuses of it say nothing. */
export function inState(circuit: Circuit, { blown }: State): Circuit {
  const components = circuit.components.map((each) =>
    each.kind === 'fuse' && blown.includes(each.id) ? { ...each, blown: true as const } : each,
  );
  return { ...circuit, components };
}
