import { isContact, isTrack, type Circuit } from '../../../src/engine/circuit/index.ts';
import { equipQuantities, type WrittenQuantity } from '../../../src/engine/schematic/index.ts';
import { writeQuantities } from '../../../src/engine/schematic/quantities/index.ts';

equipQuantities(writeQuantities);

const readings = ['', `= −0.000\u202fmA`, '= ________'];

/** Quantities to be written beside some components of a circuit: a current beside every third, a p.d. beside every other; none for even numbers. */
export function quantitiesFor({ components }: Circuit, by: number): WrittenQuantity[] {
  if (by % 2 === 0) return [];
  return components.flatMap((component, place): WrittenQuantity[] => {
    if (isContact(component) || isTrack(component)) return [];
    const { id } = component;
    const reading = readings[(place + by) % 5] ?? '';
    const current = { name: `I_${id}`, id, kind: 'current', text: `I_${id}`, reading } as const;
    const voltage = { name: `V_${id}`, id, kind: 'voltage', text: `U_${id}`, reading } as const;
    return [
      ...((place + by) % 3 === 0 ? [current] : []),
      ...((place + (by >> 1)) % 2 === 0 ? [voltage] : []),
    ];
  });
}
