import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  circuitFrom,
  circuitToJSON,
  settingOf,
  withValue,
  type Circuit,
} from '../../../src/engine/circuit/index.ts';
import { circuits } from './random-circuit.ts';

const values = ['7', '1/2', '0.3', 'r 0.5', 'r 2', '3 r 1', 'open', 'closed', 'blown', 'whole'];
const words = fc.constantFrom(...values, 'broken', 'bridged', 'intact', 'broken 4', '5 bridged', '2 intact');

/** Sets what can be set so, and leaves what cannot. */
function turned(circuit: Circuit, id: string, setting: string): Circuit {
  try {
    return withValue(circuit, id, setting);
  } catch {
    return circuit;
  }
}

function setting(fields: object): string {
  const ends = { from: 'a', to: 'b' };
  const supply = { ...ends, id: 'B9', kind: 'supply', emf: 1 };
  const [first] = circuitFrom({ version: 1, components: [{ ...ends, ...fields }, supply] }).components;
  return first ? settingOf(first) : '';
}

void describe('the setting of a component, as a text', () => {
  const table: [object, string][] = [
    [{ id: 'R1', kind: 'resistor', resistance: '4.70' }, '4.7'],
    [{ id: 'R1', kind: 'resistor', resistance: '1/3', condition: 'broken' }, '1/3 broken'],
    [{ id: 'B1', kind: 'supply', emf: '-1.5' }, '-1.5'],
    [
      { id: 'B1', kind: 'supply', emf: 6, internalResistance: '0.5', condition: 'bridged' },
      '6 r 0.5 bridged',
    ],
    [{ id: 'S1', kind: 'switch', closed: true, condition: 'broken' }, 'closed broken'],
    [{ id: 'S1', kind: 'push', closed: false }, 'open'],
    [{ id: 'F1', kind: 'fuse', ratedCurrent: 2 }, 'whole'],
    [{ id: 'F1', kind: 'fuse', ratedCurrent: 2, blown: true, condition: 'bridged' }, 'blown bridged'],
    [{ id: 'L1', kind: 'lamp', resistance: 5 }, ''],
    [{ id: 'L1', kind: 'lamp', resistance: 5, condition: 'broken' }, 'broken'],
    [{ id: 'W1', kind: 'wire', condition: 'bridged' }, 'bridged'],
  ];
  for (const [fields, text] of table) {
    void it(`of ${JSON.stringify(fields)} is “${text}”`, () => {
      assert.equal(setting(fields), text);
    });
  }

  void it('leaves the circuit as it is when it is set again', () => {
    fc.assert(
      fc.property(circuits, (circuit) => {
        for (const each of circuit.components) {
          const again = withValue(circuit, each.id, settingOf(each));
          assert.deepEqual(circuitToJSON(again), circuitToJSON(circuit));
        }
      }),
    );
  });

  void it('leads from the start to the circuit, whatever has been set in between', () => {
    fc.assert(
      fc.property(circuits, fc.array(words, { maxLength: 6 }), (start, settings) => {
        const [first] = start.components;
        assert.ok(first);
        const now = settings.reduce((circuit, text) => turned(circuit, first.id, text), start);
        const [last] = now.components;
        assert.ok(last);
        const there = withValue(start, first.id, settingOf(last, first));
        assert.deepEqual(circuitToJSON(there), circuitToJSON(now));
      }),
      { numRuns: 500 },
    );
  });

  void it('says against a start only what differs from it', () => {
    const supply = { id: 'B1', kind: 'supply', from: 'a', to: 'b', emf: 9, internalResistance: 4 };
    const resistor = { id: 'R1', kind: 'resistor', from: 'a', to: 'b', resistance: 12, hidden: true };
    const start = circuitFrom({ version: 1, components: [supply, resistor] });
    const against = (id: string, text: string, from = start): string => {
      const place = from.components.findIndex((each) => each.id === id);
      const [was, is] = [from, withValue(from, id, text)].map(({ components }) => components[place]);
      return was && is ? settingOf(is, was) : '—';
    };
    assert.equal(against('R1', 'broken'), 'broken', 'and tells no hidden value');
    assert.equal(against('B1', '6'), '6');
    assert.equal(against('B1', 'r 0.5 bridged'), 'r 0.5 bridged');
    assert.equal(against('B1', '9 r 4'), '');
    assert.equal(against('R1', 'intact', withValue(start, 'R1', 'broken')), 'intact');
    assert.equal(against('R1', '15', withValue(start, 'R1', 'broken')), '15');
  });

  void it('is read in any order of its words', () => {
    fc.assert(
      fc.property(
        circuits,
        fc.shuffledSubarray(['3', 'r 0.5', 'closed', 'broken'], { minLength: 2 }),
        (circuit, parts) => {
          for (const { id } of circuit.components) {
            const [one, other] = [parts, parts.toReversed()].map((each) =>
              turned(circuit, id, each.join(' ')),
            );
            assert.ok(one && other);
            assert.deepEqual(circuitToJSON(one), circuitToJSON(other));
          }
        },
      ),
    );
  });

  void it('says one thing with each word, and leaves the rest', () => {
    const of = (text: string, start = '6 r 0.5 broken'): string => {
      const supply = { id: 'B1', kind: 'supply', from: 'a', to: 'b', emf: 9, internalResistance: 4 };
      const circuit = withValue(circuitFrom({ version: 1, components: [supply] }), 'B1', start);
      const [component] = withValue(circuit, 'B1', text).components;
      return component ? settingOf(component) : '';
    };
    assert.equal(of('7'), '7 r 0.5 broken');
    assert.equal(of('r 2'), '6 r 2 broken');
    assert.equal(of('bridged'), '6 r 0.5 bridged');
    assert.equal(of('intact'), '6 r 0.5');
    assert.equal(of(''), '6 r 0.5 broken');
    assert.equal(of(' r\t1   8 '), '8 r 1 broken');
  });

  void it('that is refused does not tell the value that is hidden', () => {
    const supply = {
      ...{ id: 'B1', kind: 'supply', from: 'a', to: 'b', hidden: true },
      ...{ emf: '7.37', range: { min: 0, max: 10, step: '0.01' } },
      ...{ internalResistance: '1.93', internalRange: { min: 0, max: 5, step: '0.01' } },
    };
    const hidden = circuitFrom({ version: 1, components: [supply] });
    for (const text of ['12', '0.005', 'r 9', 'r 0.005', 'r -1', 'seven', 'brokn', '1 2', 'broken intact']) {
      assert.throws(
        () => withValue(hidden, 'B1', text),
        ({ message }: Error) => !/7.37|1.93/.test(message),
      );
    }
  });

  void it('gives the same component where its condition is already so', () => {
    fc.assert(
      fc.property(circuits, (circuit) => {
        for (const { id, condition = 'intact' } of circuit.components) {
          const again = withValue(circuit, id, condition);
          circuit.components.forEach((each, place) => assert.equal(again.components[place], each));
        }
      }),
    );
  });
});
