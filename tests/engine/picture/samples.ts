import { drawn, type Sample } from '../schematic/random-drawings.ts';

/** Three hundred random circuits with their drawings, which the laws of pictures share; others in every run. */
export const samples: readonly Sample[] = drawn(300);
