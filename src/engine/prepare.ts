import { hasCurve, isContact, isTrack, type Circuit } from './circuit/index.ts';
import { equipForks, equipQuantities, equipWebs, equipWipers } from './schematic/index.ts';
import { equip, equipLarge, mostDense } from './solve/index.ts';
import { seriesParallel } from './topology/index.ts';

const isWeb = (circuit: Circuit): boolean => seriesParallel(circuit).kind === 'irreducible';

/** Whether a circuit may have more loops than are solved with all their equations written out. */
function isLarge({ components }: Circuit): boolean {
  const nodes = new Set(components.flatMap(({ from, to }) => [from, to]));
  return components.length - nodes.size + 1 > mostDense;
}

/** Whether a circuit needs a part of the engine that is not in its core. */
export const needsMore = (circuit: Circuit): boolean =>
  circuit.components.some((each) => hasCurve(each) || isContact(each) || isTrack(each)) ||
  isLarge(circuit) ||
  isWeb(circuit);

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
  if (circuit.components.some(isTrack)) {
    const { drawWipers } = await import('./schematic/wiper/index.ts');
    equipWipers(drawWipers);
  }
  if (isLarge(circuit)) {
    const { sparseFlow } = await import('./sparse/index.ts');
    equipLarge(sparseFlow);
  }
  if (isWeb(circuit)) {
    const { drawWeb } = await import('./schematic/web/index.ts');
    equipWebs(drawWeb);
  }
}

/** Loads what writes the quantities that a drawing's style asks for. */
export async function prepareQuantities(): Promise<void> {
  const { writeQuantities } = await import('./schematic/quantities/index.ts');
  equipQuantities(writeQuantities);
}
