import assert from 'node:assert/strict';
import { test } from 'node:test';
import { asMarked } from '../../../src/engine/circuit/index.ts';
import { describeCircuit, drawSchematic } from '../../../src/engine/schematic/index.ts';
import { drawings } from './random-drawings.ts';

test('what is secretly wrong shows in no drawing, and in no words of it', () => {
  for (const { circuit, width } of drawings().filter((_, i) => i % 40 === 0)) {
    const components = circuit.components.map((each, place) => ({
      ...each,
      fault: place % 2 ? ('broken' as const) : ('bridged' as const),
    }));
    const faulty = { ...circuit, components };
    assert.deepEqual(drawSchematic(faulty, { width }), drawSchematic(asMarked(circuit), { width }));
    assert.equal(describeCircuit(faulty), describeCircuit(circuit));
  }
});
