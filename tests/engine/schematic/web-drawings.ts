import fc from 'fast-check';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import {
  drawSchematic,
  equipWebs,
  type Drawing,
  type DrawingStyle,
} from '../../../src/engine/schematic/index.ts';
import { drawWeb } from '../../../src/engine/schematic/web/index.ts';
import { withConditions } from '../topology/conditions.ts';
import type { Sample } from './random-drawings.ts';
import { randomWeb } from './random-web.ts';
import { quantitiesFor } from './with-quantities.ts';

equipWebs(drawWeb);

/** The drawing of any circuit. */
export function drawn(circuit: Circuit, width = 640, style: DrawingStyle = {}): Drawing {
  const drawing = drawSchematic(circuit, { ...style, width });
  if (drawing.kind === 'irreducible') throw new Error(drawing.reason);
  return drawing;
}

const sample = fc.tuple(randomWeb, fc.constantFrom(300, 640), fc.nat({ max: 99 }));

let samples: readonly Sample[] | undefined;

/** So many random webs, in a third of them some components taken out or bridged, in half of them quantities written. */
export const drawWebs = (count: number, seed?: number): readonly Sample[] =>
  fc.sample(sample, { numRuns: count, ...(seed !== undefined && { seed }) }).map(([whole, width, by]) => {
    const circuit = withConditions(whole, (_, place) =>
      by % 3 > 0 || (place + by) % 4 > 1 ? undefined : (place + by) % 4 === 0 ? 'broken' : 'bridged',
    );
    const style = { width, quantities: quantitiesFor(circuit, by) };
    return { circuit, width, style, drawing: drawn(circuit, width, style) };
  });

/** Four hundred random webs, drawn once for all the laws that they are held against. */
export function webs(): readonly Sample[] {
  samples ??= drawWebs(400);
  return samples;
}
