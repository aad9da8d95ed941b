import { drawn, type Sample } from '../schematic/random-drawings.ts';

/** Three hundred random circuits with their drawings, which the laws of pictures share. */
export const samples: readonly Sample[] = drawn(300);
