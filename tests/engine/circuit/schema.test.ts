import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { Ajv2020 } from 'ajv/dist/2020.js';
import schema from '../../../docs/circuit.schema.json' with { type: 'json' };
import effective from '../../reference/effective-resistance.json' with { type: 'json' };
import { circuitFrom, circuitToJSON, CircuitFormatError } from '../../../src/engine/circuit/index.ts';
import { circuits } from './random-circuit.ts';

// A check by a general-purpose validator (ajv) of JSON Schema 2020-12.
const valid = new Ajv2020({ strict: false }).compile(schema);

const supply = { id: 'B1', kind: 'supply', from: 'a', to: '0', emf: '6' };
const resistor = { id: 'R1', kind: 'resistor', from: 'a', to: '0', resistance: '12' };
const lamp = { id: 'L1', kind: 'lamp', from: 'a', to: '0' };
const quay = (...components: unknown[]): unknown => ({ version: 1, components: [supply, ...components] });

function read(json: unknown): boolean {
  try {
    circuitFrom(json);
    return true;
  } catch (error) {
    assert.ok(error instanceof CircuitFormatError);
    return false;
  }
}

describe('the published schema', () => {
  const both: [string, unknown, boolean][] = [
    ['a supply and a resistor', quay(resistor), true],
    ['values as numbers', quay({ ...resistor, resistance: 4.7 }), true],
    ['a third of an ohm', quay({ ...resistor, resistance: '1/3' }), true],
    ['a division by zero', quay({ ...resistor, resistance: '1/0' }), false],
    ['a value with its unit', quay({ ...resistor, resistance: '12 ohm' }), false],
    ['a negative resistance as a number', quay({ ...resistor, resistance: -1 }), false],
    ['a negative resistance as a text', quay({ ...resistor, resistance: '-1' }), false],
    ['a resistance of 0', quay({ ...resistor, resistance: 0 }), true],
    ['a negative e.m.f.', quay({ ...supply, id: 'B2', emf: '-1.5' }), true],
    ['no e.m.f.', quay({ ...supply, id: 'B2', emf: undefined }), false],
    ['three cells', quay({ ...supply, id: 'B2', cells: 3 }), true],
    ['terminals of a d.c. supply', quay({ ...supply, id: 'B2', form: 'supply' }), true],
    ['a battery of three cells', quay({ ...supply, id: 'B2', cells: 3, form: 'battery' }), true],
    ['a cell of three cells', quay({ ...supply, id: 'B2', cells: 3, form: 'cell' }), false],
    ['a cell of one cell', quay({ ...supply, id: 'B2', cells: 1, form: 'cell' }), true],
    ['terminals of one cell', quay({ ...supply, id: 'B2', cells: 1, form: 'supply' }), false],
    ['a supply of a form unheard of', quay({ ...supply, id: 'B2', form: 'dynamo' }), false],
    ['a resistor of a form', quay({ ...resistor, form: 'cell' }), false],
    ['half a cell', quay({ ...supply, id: 'B2', cells: 0.5 }), false],
    ['a slider', quay({ ...resistor, range: { min: 2, max: 40, step: 2 } }), true],
    ['a slider without an end', quay({ ...resistor, range: { min: 2 } }), false],
    ['a logarithmic slider', quay({ ...resistor, range: { min: 1, max: '1e3', scale: 'log' } }), true],
    ['a supply to turn', quay({ ...supply, id: 'B2', range: { min: '-12', max: 12, step: 1 } }), true],
    ['a supply on a scale', quay({ ...supply, id: 'B2', range: { min: 1, max: 10, scale: 'log' } }), true],
    [
      'a supply on a scale from 0',
      quay({ ...supply, id: 'B2', range: { min: 0, max: 10, scale: 'log' } }),
      false,
    ],
    [
      'an internal resistance to turn',
      quay({ ...supply, id: 'B2', internalResistance: 1, internalRange: { min: 0, max: 2 } }),
      true,
    ],
    [
      'an internal resistance that may be negative',
      quay({ ...supply, id: 'B2', internalResistance: 1, internalRange: { min: -1, max: 2 } }),
      false,
    ],
    [
      'the range of no internal resistance',
      quay({ ...supply, id: 'B2', internalRange: { min: 0, max: 2 } }),
      false,
    ],
    ['a lamp taken out', quay({ ...lamp, resistance: 8, condition: 'broken' }), true],
    ['a bridged supply', quay({ ...supply, id: 'B2', condition: 'bridged' }), true],
    ['a condition unheard of', quay({ ...resistor, condition: 'intact' }), false],
    ['a secret fault', quay({ ...resistor, fault: 'bridged' }), true],
    ['a secret fault unheard of', quay({ ...resistor, fault: 'dim' }), false],
    ['a condition by truth', quay({ ...resistor, condition: true }), false],
    ['a scale unheard of', quay({ ...resistor, range: { min: 1, max: 100, scale: 'E7' } }), false],
    ['a lamp by its resistance', quay({ ...lamp, resistance: 8 }), true],
    ['a lamp by two ratings', quay({ ...lamp, ratedVoltage: 6, ratedCurrent: '0.5' }), true],
    ['a lamp by one rating', quay({ ...lamp, ratedVoltage: 6 }), false],
    ['a lamp by three', quay({ ...lamp, ratedVoltage: 6, ratedPower: 3, ratedCurrent: 0.5 }), false],
    ['a lamp of no ohms', quay({ ...lamp, resistance: 0 }), false],
    ['a closed switch', quay({ id: 'S1', kind: 'switch', from: 'a', to: '0', closed: true }), true],
    ['a switch that is shut', quay({ id: 'S1', kind: 'switch', from: 'a', to: '0', closed: 'shut' }), false],
    ['an ideal meter', quay({ id: 'A1', kind: 'ammeter', from: 'a', to: '0' }), true],
    ['a real meter', quay({ id: 'V1', kind: 'voltmeter', from: 'a', to: '0', resistance: '1e6' }), true],
    ['a wire', quay({ id: 'W1', kind: 'wire', from: 'a', to: '0' }), true],
    ['a wire with a resistance', quay({ id: 'W1', kind: 'wire', from: 'a', to: '0', resistance: 1 }), false],
    ['a hidden value', quay({ ...resistor, hidden: true }), true],
    ['a label in small letters', quay({ ...resistor, id: 'r1' }), false],
    ['a node without a name', quay({ ...resistor, from: '' }), false],
    ['a kind unheard of', quay({ ...resistor, kind: 'coil' }), false],
    ['a field unheard of', quay({ ...resistor, colour: 'red' }), false],
    ['another version', { version: 2, components: [supply] }, false],
    ['no components', { version: 1 }, false],
    ['terminals', { version: 1, components: [resistor], terminals: ['a', '0'] }, true],
    ['one terminal', { version: 1, components: [resistor], terminals: ['a'] }, false],
  ];
  for (const [name, json, expected] of both) {
    it(`${expected ? 'takes' : 'refuses'} ${name}, as the engine does`, () => {
      // Through a text, as JSON travels: what is undefined is absent.
      const sent: unknown = JSON.parse(JSON.stringify(json));
      assert.equal(read(sent), expected);
      assert.equal(valid(sent), expected, JSON.stringify(valid.errors));
    });
  }

  it('takes what the engine writes of supplies to turn, and of what is broken or bridged', () => {
    fc.assert(
      fc.property(circuits, (circuit) => {
        assert.ok(valid(JSON.parse(JSON.stringify(circuitToJSON(circuit)))), JSON.stringify(valid.errors));
      }),
    );
  });

  it('takes what the engine writes, for every published network', () => {
    for (const { edges, nodes } of effective) {
      const components = edges.map(([from, to, resistance = '1'], index) => ({
        id: `R${index + 1}`,
        kind: 'resistor',
        from,
        to,
        resistance,
      }));
      const written = circuitToJSON(circuitFrom({ version: 1, components, terminals: nodes }));
      assert.ok(valid(JSON.parse(JSON.stringify(written))), JSON.stringify(valid.errors));
    }
  });
});
