import { test } from 'node:test';
import { circuitToJSON } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { drawSchematic } from '../../../src/engine/schematic/index.ts';
import { laws } from './laws.ts';
import { drawings } from './random-drawings.ts';

for (const { name, check } of laws) {
  test(`in a thousand random drawings ${name}`, () => {
    for (const { circuit, drawing, width } of drawings()) {
      try {
        check(drawing, circuit);
      } catch (error) {
        throw new Error(`${width} px: ${JSON.stringify(circuitToJSON(circuit))}`, { cause: error });
      }
    }
  });
}

// In a thousand random drawings a loop so narrow comes up too seldom.
test('in the narrowest loop, the wires across components that face each other do not touch', () => {
  const supplies = Array.from({ length: 9 }, (_, i) => `Bquay${i + 1} 1.5 V bridged`);
  const circuit = parseCircuit(supplies.join(' + '));
  for (const width of [120, 200, 300]) {
    const drawing = drawSchematic(circuit, { width });
    if (drawing.kind === 'irreducible') throw new Error('not series and parallel');
    for (const { check } of laws) check(drawing, circuit);
  }
});
