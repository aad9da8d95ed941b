import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { bridges, circuitFrom, circuitToJSON, withValue } from '../../../src/engine/circuit/index.ts';
import { circuits } from './random-circuit.ts';

void describe('the bridges of a circuit', () => {
  void it('are a wire across each component that is bridged, right behind it, and all else is the same', () => {
    fc.assert(
      fc.property(circuits, (circuit) => {
        const bridged = bridges(circuit);
        const own = bridged.components.filter((each) => circuit.components.includes(each));
        assert.deepEqual(own, circuit.components);
        assert.equal(bridged.terminals, circuit.terminals);
        bridged.components.forEach((component, place) => {
          const before = bridged.components[place - 1];
          if (circuit.components.includes(component)) return;
          assert.ok(before?.condition === 'bridged');
          const { from, to } = before;
          assert.deepEqual(component, { id: `${before.id} bridge`, kind: 'wire', from, to });
        });
        const count = circuit.components.filter(({ condition }) => condition === 'bridged').length;
        assert.equal(bridged.components.length, circuit.components.length + count);
      }),
    );
  });

  void it('are none where nothing is bridged: the same circuit', () => {
    fc.assert(
      fc.property(circuits, (circuit) => {
        const mended = circuit.components.reduce((each, { id }) => withValue(each, id, 'intact'), circuit);
        assert.equal(bridges(mended), mended);
      }),
    );
  });

  void it('are put there once', () => {
    fc.assert(
      fc.property(circuits, (circuit) => {
        const bridged = bridges(circuit);
        assert.equal(bridges(bridged), bridged);
      }),
    );
  });

  void it('have ids that no component of a page can have', () => {
    fc.assert(
      fc.property(circuits, (circuit) => {
        const bridged = bridges(circuit);
        if (bridged !== circuit)
          assert.throws(() => circuitFrom(circuitToJSON(bridged)), /cannot be a label/);
      }),
    );
  });
});
