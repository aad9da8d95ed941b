import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  actualResistance,
  asMarked,
  circuitFrom,
  circuitToJSON,
  hasFault,
  resistanceOf,
  settingOf,
  withValue,
} from '../../../src/engine/circuit/index.ts';
import { formatCircuit } from '../../../src/engine/notation/format/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { circuits } from './random-circuit.ts';
import { withFaults } from './with-faults.ts';

const quay = parseCircuit('B1 6 V + S1 + R1 [2..40] 8 Ω + L1 8 Ω broken');
const faultOf = (id: string, setting: string): string | undefined =>
  withValue(quay, id, setting).components.find((each) => each.id === id)?.fault;

describe('a secret fault', () => {
  it('is a setting of any component, beside the others', () => {
    assert.equal(faultOf('R1', 'secretly broken'), 'broken');
    assert.equal(faultOf('S1', 'closed secretly bridged'), 'bridged');
    assert.equal(faultOf('R1', '20 secretly  bridged broken'), 'bridged');
    assert.equal(faultOf('B1', '4 r 0.5 secretly broken'), 'broken');
    for (const text of ['secretly', 'secretly 20', 'secretly broken secretly bridged'])
      assert.throws(() => faultOf('R1', text), /not a (setting|number)|"secretly/);
  });

  it('goes by the word intact, and not by what is done openly', () => {
    const broken = withValue(quay, 'R1', 'secretly broken');
    for (const setting of ['20', 'broken', 'bridged', 'intact', 'broken 4'])
      assert.equal(withValue(broken, 'R1', setting).components[2]?.fault, 'broken', setting);
    assert.deepEqual(withValue(broken, 'R1', 'secretly intact'), quay);
    assert.equal(withValue(quay, 'R1', 'secretly intact').components[2], quay.components[2]);
  });

  it('is no part of what is set, whatever it is', () => {
    fc.assert(
      fc.property(withFaults(circuits), (circuit) => {
        circuit.components.forEach((each, place) => {
          const marked = asMarked(circuit).components[place];
          assert.ok(marked && !('fault' in marked));
          assert.equal(settingOf(each), settingOf(marked));
          assert.equal(settingOf(each, marked), '');
        });
      }),
    );
  });

  it('stands in the line and in the JSON form, and nothing else changes with it', () => {
    assert.equal(
      formatCircuit(parseCircuit('B1 6 V + R1 hidden secretly bridged 8 Ω broken')),
      'B1 6 V + R1 8 Ω broken secretly bridged hidden',
    );
    fc.assert(
      fc.property(withFaults(circuits), (circuit) => {
        const read = circuitFrom(JSON.parse(JSON.stringify(circuitToJSON(circuit))));
        assert.deepEqual(circuitToJSON(read), circuitToJSON(circuit));
        assert.equal(hasFault(asMarked(circuit)), false);
        const line = formatCircuit(circuit);
        assert.equal(line.replaceAll(/ secretly \w+/g, ''), formatCircuit(asMarked(circuit)));
      }),
    );
  });

  it('leaves a component the resistance that it is marked with, and gives it another in truth', () => {
    fc.assert(
      fc.property(withFaults(circuits), (circuit) => {
        circuit.components.forEach((each, place) => {
          const marked = asMarked(circuit).components[place];
          assert.ok(marked);
          assert.deepEqual(resistanceOf(each), resistanceOf(marked));
          const counts = each.condition ? undefined : each.fault;
          const actual = actualResistance(each);
          if (!counts) assert.deepEqual(actual, resistanceOf(marked));
          else assert.equal(actual?.toFraction(), counts === 'bridged' ? '0' : undefined);
        });
      }),
    );
  });
});
