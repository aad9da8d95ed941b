import fc from 'fast-check';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { drawSchematic, type Drawing, type DrawingStyle } from '../../../src/engine/schematic/index.ts';
import { withConditions } from '../topology/conditions.ts';
import { randomCircuit } from './random-circuit.ts';
import { quantitiesFor } from './with-quantities.ts';
import { withZero } from './with-zero.ts';

/** A random circuit with its drawing at one of two widths. */
export interface Sample {
  readonly circuit: Circuit;
  readonly width: number;
  readonly style: DrawingStyle;
  readonly drawing: Drawing;
}

const condition = fc.oneof(
  { weight: 6, arbitrary: fc.constant(undefined) },
  { weight: 1, arbitrary: fc.constant('broken' as const) },
  { weight: 1, arbitrary: fc.constant('bridged' as const) },
);
const sample = fc.tuple(
  randomCircuit,
  fc.constantFrom(300, 640),
  fc.oneof(fc.constant([]), fc.array(condition, { minLength: 41, maxLength: 41 })),
  fc.nat(99),
  fc.nat(99),
);

/**
 * So many random circuits, in half of them some components taken out or bridged, in half of them a 0 V mark, in half of them quantities
 * written, with their drawings.
 */
export const drawn = (count: number): readonly Sample[] =>
  fc.sample(sample, count).map(([whole, width, conditions, by, written]) => {
    const circuit = withZero(
      withConditions(whole, (_, place) => conditions[place]),
      by,
    );
    const style = { width, quantities: quantitiesFor(circuit, written) };
    const drawing = drawSchematic(circuit, style);
    if (drawing.kind === 'irreducible') throw new Error(`not series and parallel: ${drawing.ids.join(', ')}`);
    return { circuit, width, style, drawing };
  });

let samples: readonly Sample[] | undefined;

/** A thousand of them, drawn once for all the laws that they are held against. */
export function drawings(): readonly Sample[] {
  samples ??= drawn(1000);
  return samples;
}
