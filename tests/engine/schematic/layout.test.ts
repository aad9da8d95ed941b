import { test } from 'node:test';
import { circuitToJSON } from '../../../src/engine/circuit/index.ts';
import { laws } from './laws.ts';
import { drawings } from './random-drawings.ts';

for (const { name, check } of laws) {
  test(`in two thousand random drawings ${name}`, () => {
    for (const { circuit, drawing, width } of drawings()) {
      try {
        check(drawing, circuit);
      } catch (error) {
        throw new Error(`${width} px: ${JSON.stringify(circuitToJSON(circuit))}`, { cause: error });
      }
    }
  });
}
