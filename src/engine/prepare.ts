import { hasCurve, type Circuit } from './circuit/index.ts';
import { equip } from './solve/index.ts';

/** Whether a circuit needs a part of the engine that is not in its core. */
export const needsMore = ({ components }: Circuit): boolean => components.some(hasCurve);

/** Loads the parts of the engine that a circuit needs beyond its core; until then `solve` says that it cannot solve it. */
export async function prepare(circuit: Circuit): Promise<void> {
  if (!needsMore(circuit)) return;
  const { curves } = await import('./nonlinear/index.ts');
  equip(curves);
}
