import { hasCurve, isContact, type Circuit } from './circuit/index.ts';
import { equipForks, equipWebs } from './schematic/index.ts';
import { equip } from './solve/index.ts';
import { seriesParallel } from './topology/index.ts';

const isWeb = (circuit: Circuit): boolean => seriesParallel(circuit).kind === 'irreducible';

/** Whether a circuit needs a part of the engine that is not in its core. */
export const needsMore = (circuit: Circuit): boolean =>
  circuit.components.some((each) => hasCurve(each) || isContact(each)) || isWeb(circuit);

/** Loads the parts of the engine that a circuit needs beyond its core; until then `solve` says that it cannot solve it, and `drawSchematic` does not draw it. */
export async function prepare(circuit: Circuit): Promise<void> {
  if (circuit.components.some(hasCurve)) {
    const { curves } = await import('./nonlinear/index.ts');
    equip(curves);
  }
  if (circuit.components.some(isContact)) {
    const { drawForks } = await import('./schematic/fork/index.ts');
    equipForks(drawForks);
  }
  if (isWeb(circuit)) {
    const { drawWeb } = await import('./schematic/web/index.ts');
    equipWebs(drawWeb);
  }
}
