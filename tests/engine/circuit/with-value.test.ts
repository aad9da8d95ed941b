import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import {
  CircuitFormatError,
  circuitFrom,
  resistanceOf,
  withValue,
  type Setting,
} from '../../../src/engine/circuit/index.ts';
import { Fraction, writeQuantity } from '../../../src/engine/quantity/index.ts';

const pump = circuitFrom({
  version: 1,
  components: [
    { id: 'B1', kind: 'supply', from: 'a', to: '0', emf: '6' },
    {
      id: 'R1',
      kind: 'resistor',
      from: 'a',
      to: 'b',
      resistance: '8',
      range: { min: 2, max: 40, step: '0.5' },
    },
    { id: 'S1', kind: 'switch', from: 'b', to: 'c' },
    { id: 'L1', kind: 'lamp', from: 'c', to: '0', resistance: '4' },
  ],
});

function code(id: string, value: Setting): string {
  try {
    withValue(pump, id, value);
  } catch (error) {
    assert.ok(error instanceof CircuitFormatError);
    return error.code;
  }
  return 'accepted';
}

void describe('a circuit with one component set anew', () => {
  void it('holds the new value, and every other component is the same object', () => {
    const turned = withValue(pump, 'R1', '12.5');
    const [before, after] = [pump.components[1], turned.components[1]];
    assert.ok(after?.kind === 'resistor' && before?.kind === 'resistor');
    assert.equal(after.resistance.value.toFraction(), '25/2');
    assert.equal(before.resistance.value.toFraction(), '8');
    for (const place of [0, 2, 3]) assert.equal(turned.components[place], pump.components[place]);
  });

  void it('takes a number, an exact text or a fraction alike', () => {
    for (const value of [12.5, '12.5', '25/2', new Fraction(25, 2)]) {
      assert.deepEqual(withValue(pump, 'R1', value), withValue(pump, 'R1', '12.5'));
    }
  });

  void it('takes a fraction of another copy of the package, whose class is another', () => {
    const other = Object.assign(Object.create(Object.prototype) as Fraction, new Fraction(25, 2));
    assert.ok(!(other instanceof Fraction));
    assert.deepEqual(withValue(pump, 'R1', other), withValue(pump, 'R1', '12.5'));
    for (const value of [{}, [], null] as unknown as Setting[])
      assert.notEqual(code('R1', value), 'accepted');
  });

  void it('writes the new value the way the old one was written', () => {
    const kilo = circuitFrom({
      version: 1,
      components: [{ id: 'R1', kind: 'resistor', from: 'a', to: 'b', resistance: '4.0' }],
      terminals: ['a', 'b'],
    });
    const resistor = withValue(kilo, 'R1', 5).components[0];
    assert.ok(resistor?.kind === 'resistor');
    assert.equal(writeQuantity(resistor.resistance).number, '5.0');
  });

  void it('opens and closes a switch by word or by truth', () => {
    for (const closed of ['closed', true] as const) {
      const component = withValue(pump, 'S1', closed).components[2];
      assert.ok(component?.kind === 'switch' && component.closed);
    }
    const component = withValue(withValue(pump, 'S1', 'closed'), 'S1', 'open').components[2];
    assert.ok(component?.kind === 'switch' && !component.closed);
  });

  const table: [string, Setting, string][] = [
    ['R1', 40, 'accepted'],
    ['R1', 41, 'out of range'],
    ['R1', 1, 'out of range'],
    ['R1', -3, 'must not be negative'],
    ['R1', '8.25', 'not on a step'],
    ['R1', 'eight', 'not a number'],
    ['R1', true, 'not a number'],
    ['R1', NaN, 'not a number'],
    ['S1', 'shut', 'wrong type'],
    ['S1', 1, 'wrong type'],
    ['L1', 3, 'cannot be set'],
    ['L1', '3', 'cannot be set'],
    ['L1', 'brokn', 'not a setting'],
    ['L1', 'open', 'cannot be set'],
    ['R1', '20 30', 'not a setting'],
    ['R1', '12 000', 'not a setting'],
    ['R1', 'broken bridged', 'not a setting'],
    ['R1', 'broken 41', 'out of range'],
    ['R1', '20 r 0.5', 'not a setting'],
    ['B1', '6 r 0.5 r 1', 'not a setting'],
    ['B1', '6 r', 'not a setting'],
    ['B1', 'r', 'not a number'],
    ['B1', 'r -1', 'must not be negative'],
    ['B1', 'r half', 'not a number'],
    ['S1', 'open closed', 'not a setting'],
    ['S1', 'r 0.5', 'wrong type'],
    ['R9', 3, 'no such component'],
    ['B1', -4.5, 'accepted'],
  ];
  for (const [id, value, expected] of table) {
    void it(`${id} to ${String(value)}: ${expected}`, () => {
      assert.equal(code(id, value), expected);
    });
  }
});

void describe('the resistance of a component', () => {
  const lamp = (ratings: object): string | undefined => {
    const [first] = circuitFrom({
      version: 1,
      components: [{ id: 'L1', kind: 'lamp', from: 'a', to: 'b', ...ratings }],
      terminals: ['a', 'b'],
    }).components;
    return first && resistanceOf(first)?.toFraction();
  };

  void it('of a lamp follows from two of its ratings: V²/P, V/I, P/I²', () => {
    assert.equal(lamp({ ratedVoltage: 6, ratedPower: 3 }), '12');
    assert.equal(lamp({ ratedVoltage: '2.5', ratedCurrent: '0.3' }), '25/3');
    assert.equal(lamp({ ratedPower: 3, ratedCurrent: '0.5' }), '12');
    assert.equal(lamp({ resistance: '8' }), '8');
  });

  void it('of what is broken is none, whatever it is, and of what is bridged its own', () => {
    for (const { id } of pump.components) {
      const resistance = (setting: string): string | undefined => {
        const component = withValue(pump, id, setting).components.find((each) => each.id === id);
        return component && resistanceOf(component)?.toFraction();
      };
      assert.equal(resistance('broken'), undefined);
      assert.equal(resistance('bridged'), resistance('intact'));
    }
  });

  void it('of an open switch and of an ideal voltmeter is none, of an ideal ammeter and a wire 0', () => {
    const of = (fields: object): string | undefined => {
      const [first] = circuitFrom({
        version: 1,
        components: [{ id: 'X1', from: 'a', to: 'b', ...fields }],
        terminals: ['a', 'b'],
      }).components;
      return first && resistanceOf(first)?.toFraction();
    };
    assert.equal(of({ kind: 'switch' }), undefined);
    assert.equal(of({ kind: 'voltmeter' }), undefined);
    assert.equal(of({ kind: 'switch', closed: true }), '0');
    assert.equal(of({ kind: 'ammeter' }), '0');
    assert.equal(of({ kind: 'wire' }), '0');
    assert.equal(of({ kind: 'voltmeter', resistance: '1e4' }), '10000');
  });
});
