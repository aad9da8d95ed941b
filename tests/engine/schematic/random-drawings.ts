import fc from 'fast-check';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { drawSchematic, type Drawing } from '../../../src/engine/schematic/index.ts';
import { randomCircuit } from './random-circuit.ts';

/** A random circuit with its drawing at one of two widths. */
export interface Sample {
  readonly circuit: Circuit;
  readonly width: number;
  readonly drawing: Drawing;
}

let samples: Sample[] | undefined;

/** Two thousand random circuits, drawn once for all the laws that they are held against; another two thousand in every run. */
export function drawings(): readonly Sample[] {
  samples ??= fc.sample(fc.tuple(randomCircuit, fc.constantFrom(300, 640)), 2000).map(([circuit, width]) => {
    const drawing = drawSchematic(circuit, { width });
    if (drawing.kind === 'irreducible') throw new Error(`not series and parallel: ${drawing.ids.join(', ')}`);
    return { circuit, width, drawing };
  });
  return samples;
}
