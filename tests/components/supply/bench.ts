import '../../../src/components/supply/define.ts';
import { circuitFrom, type Circuit } from '../../../src/engine/index.ts';
import type { RheoletSupply } from '../../../src/components/supply/index.ts';
import { besideBoard, settled, type BesideBoard } from '../beside-board.ts';

export { boxes, mistakes, names, shown, sliders, steps, type } from '../slider/parts.ts';

/** The quay's battery, with a range for the e.m.f., for the internal resistance, for both or for neither. */
export function battery(
  range?: readonly [string, string],
  inside?: readonly [string, string],
  emf = '6',
): Circuit {
  const of = (ends: readonly [string, string] | undefined): object | undefined =>
    ends && { min: ends[0], max: ends[1], step: '0.5' };
  const supply = {
    id: 'B1',
    kind: 'supply',
    from: 'a',
    to: 'z',
    emf,
    internalResistance: '0.5',
    ...(range ? { range: of(range) } : {}),
    ...(inside ? { internalRange: of(inside) } : {}),
  };
  const lamp = { id: 'L1', kind: 'lamp', from: 'a', to: 'z', resistance: '8' };
  return circuitFrom({ version: 1, components: [supply, lamp] });
}

/** A supply's control beside a board. */
export async function supplyBeside(
  circuit: string | Circuit,
  attributes: Readonly<Record<string, string>> = {},
): Promise<BesideBoard<RheoletSupply>> {
  const text = typeof circuit === 'string' ? circuit : 'B1 6 V + L1 8 Ω';
  const bench = await besideBoard<RheoletSupply>('rheolet-supply', text, attributes);
  if (typeof circuit !== 'string') {
    bench.board.circuit = circuit;
    await bench.board.ready;
    await settled();
  }
  return bench;
}
