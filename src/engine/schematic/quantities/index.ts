import type { QuantityDrawer } from '../block.ts';
import { apart } from './apart.ts';
import { place } from './place.ts';
import { inLine, withRoom } from './room.ts';

/** Writes currents and p.d.s beside their components, for `equipQuantities`. */
export const writeQuantities: QuantityDrawer = { withRoom, inLine, place, apart };
