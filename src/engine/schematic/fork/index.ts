import type { ForkDrawer } from '../block.ts';
import { forkBlock } from './fork-block.ts';
import { placeFork } from './place-fork.ts';

export type { Fork } from './fork.ts';
/** See `placeFork`. */
export type PlaceFork = typeof placeFork;

/** Draws changeover switches as symbols of three terminals, for `equipForks`. */
export const drawForks: ForkDrawer = { blockOf: forkBlock, place: placeFork };
