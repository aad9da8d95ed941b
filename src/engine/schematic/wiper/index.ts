import type { WiperDrawer } from '../block.ts';
import { placeWiper } from './place-wiper.ts';
import { gather } from './tap.ts';
import { tapBlock } from './tap-block.ts';

export type { Tap } from './tap-block.ts';
/** See `placeWiper`. */
export type PlaceWiper = typeof placeWiper;

/** Draws potentiometers as symbols of three terminals, for `equipWipers`. */
export const drawWipers: WiperDrawer = { gather, blockOf: tapBlock, place: placeWiper };
