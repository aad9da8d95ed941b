import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { CircuitFormatError, circuitFrom, circuitToJSON } from '../../../src/engine/circuit/index.ts';
import { circuits } from './random-circuit.ts';

const supply = { id: 'B1', kind: 'supply', from: 'a', to: '0', emf: '6' };
const resistor = { id: 'R1', kind: 'resistor', from: 'a', to: '0', resistance: '12' };
const quay = (...components: unknown[]): unknown => ({ version: 1, components: [supply, ...components] });

/** The error of a bad circuit. */
function refusal(json: unknown): CircuitFormatError {
  try {
    circuitFrom(json);
  } catch (error) {
    assert.ok(error instanceof CircuitFormatError, String(error));
    return error;
  }
  return assert.fail('nothing was refused');
}

void describe('a circuit from JSON', () => {
  void it('takes numbers and exact texts for the same values', () => {
    const texts = circuitFrom(quay({ ...resistor, resistance: '4.7' }));
    const numbers = circuitFrom(quay({ ...resistor, resistance: 4.7 }));
    assert.deepEqual(texts, numbers);
    const third = circuitFrom(quay({ ...resistor, resistance: '1/3' })).components[1];
    assert.ok(third?.kind === 'resistor' && third.resistance.value.toFraction() === '1/3');
  });

  void it('reads every kind with every field', () => {
    const { components } = circuitFrom({
      version: 1,
      components: [
        { ...supply, internalResistance: 0.5, cells: 4 },
        { ...resistor, range: { min: 2, max: 40, step: 2 }, tolerance: 5, ratedPower: '0.5', hidden: true },
        { id: 'L1', kind: 'lamp', from: 'a', to: '0', ratedVoltage: '2.5', ratedCurrent: '0.3' },
        { id: 'S1', kind: 'switch', from: 'a', to: '0', closed: true },
        { id: 'A1', kind: 'ammeter', from: 'a', to: '0' },
        { id: 'V1', kind: 'voltmeter', from: 'a', to: '0', resistance: '1e6' },
        { id: 'W1', kind: 'wire', from: 'a', to: '0' },
      ],
    });
    assert.deepEqual(
      components.map(({ kind }) => kind),
      ['supply', 'resistor', 'lamp', 'switch', 'ammeter', 'voltmeter', 'wire'],
    );
  });

  const table: [string, unknown, string, string][] = [
    ['no object', 'B1 6 V', '', 'wrong type'],
    ['a list', [], '', 'wrong type'],
    ['null', null, '', 'wrong type'],
    ['no version', { components: [] }, '', 'missing field'],
    ['another version', { version: 2, components: [] }, 'version', 'unknown version'],
    ['an unknown field', { version: 1, component: [] }, '', 'unknown field'],
    ['no components', { version: 1 }, 'components', 'wrong type'],
    ['a component that is a text', quay('R1'), 'components[1]', 'wrong type'],
    ['no kind', quay({ id: 'R1' }), 'components[1]', 'missing field'],
    ['a kind with a slip', quay({ ...resistor, kind: 'resistr' }), 'components[1].kind', 'unknown kind'],
    [
      'a kind of the prototype',
      quay({ ...resistor, kind: 'toString' }),
      'components[1].kind',
      'unknown kind',
    ],
    ['a field of another kind', quay({ ...resistor, emf: 3 }), 'components[1]', 'unknown field'],
    ['no resistance', quay({ ...resistor, resistance: undefined }), 'components[1]', 'missing field'],
    [
      'a resistance with a unit',
      quay({ ...resistor, resistance: '12 ohm' }),
      'components[1].resistance',
      'not a number',
    ],
    [
      'a negative resistance',
      quay({ ...resistor, resistance: -1 }),
      'components[1].resistance',
      'must not be negative',
    ],
    ['not a number', quay({ ...resistor, resistance: NaN }), 'components[1].resistance', 'not a number'],
    ['no end', quay({ ...resistor, resistance: Infinity }), 'components[1].resistance', 'not a number'],
    [
      'a division by zero',
      quay({ ...resistor, resistance: '1/0' }),
      'components[1].resistance',
      'not a number',
    ],
    [
      'an exponent too far',
      quay({ ...resistor, resistance: '1e99' }),
      'components[1].resistance',
      'not a number',
    ],
    ['a label in small letters', quay({ ...resistor, id: 'r1' }), 'components[1].id', 'not a label'],
    ['markup for a label', quay({ ...resistor, id: '<b>' }), 'components[1].id', 'not a label'],
    ['the label of another', quay({ ...resistor, id: 'B1' }), 'components[1].id', 'label used twice'],
    ['a node without a name', quay({ ...resistor, from: '' }), 'components[1].from', 'not a node name'],
    ['a node that is a number', quay({ ...resistor, from: 1 }), 'components[1].from', 'wrong type'],
    ['no node', quay({ ...resistor, to: undefined }), 'components[1]', 'missing field'],
    ['hidden by a text', quay({ ...resistor, hidden: 'yes' }), 'components[1].hidden', 'wrong type'],
    [
      'a range without an end',
      quay({ ...resistor, range: { min: 2 } }),
      'components[1].range',
      'missing field',
    ],
    [
      'a value out of range',
      quay({ ...resistor, range: { min: 20, max: 40 } }),
      'components[1].range',
      'out of range',
    ],
    [
      'an empty range',
      quay({ ...resistor, range: { min: 12, max: 12 } }),
      'components[1].range',
      'out of range',
    ],
    [
      'a value off the steps',
      quay({ ...resistor, resistance: 13, range: { min: 2, max: 47, step: 5 } }),
      'components[1].range',
      'not on a step',
    ],
    [
      'an end off the steps',
      quay({ ...resistor, range: { min: 2, max: 41, step: 2 } }),
      'components[1].range',
      'not on a step',
    ],
    [
      'an E12 value that is none',
      quay({ ...resistor, resistance: 13, range: { min: 1, max: 100, scale: 'E12' } }),
      'components[1].range',
      'not on a step',
    ],
    [
      'a scale unheard of',
      quay({ ...resistor, range: { min: 1, max: 100, scale: 'E7' } }),
      'components[1].range.scale',
      'wrong type',
    ],
    [
      'a step beside a scale, which has its own',
      quay({ ...resistor, range: { min: 1, max: 100, step: 1, scale: 'log' } }),
      'components[1].range',
      'unknown field',
    ],
    ['a tolerance of 100 %', quay({ ...resistor, tolerance: 100 }), 'components[1].tolerance', 'not below'],
    [
      'a condition that is none',
      quay({ ...resistor, condition: 'brokn' }),
      'components[1].condition',
      'not a setting',
    ],
    [
      'a secret fault that is none',
      quay({ ...resistor, fault: 'bridge' }),
      'components[1].fault',
      'not a setting',
    ],
    [
      'a condition by truth',
      quay({ ...resistor, condition: true }),
      'components[1].condition',
      'not a setting',
    ],
    [
      'an e.m.f. out of its range',
      quay({ ...supply, id: 'B2', range: { min: 8, max: 12 } }),
      'components[1].range',
      'out of range',
    ],
    [
      'a range of an internal resistance that is none',
      quay({ ...supply, id: 'B2', internalRange: { min: 0, max: 2 } }),
      'components[1]',
      'missing field',
    ],
    [
      'an internal resistance that could be negative',
      quay({ ...supply, id: 'B2', internalResistance: 0, internalRange: { min: -1, max: 2 } }),
      'components[1].internalRange.min',
      'must not be negative',
    ],
    [
      'an internal resistance off its steps',
      quay({
        ...supply,
        id: 'B2',
        internalResistance: '0.3',
        internalRange: { min: 0, max: 2, step: '0.5' },
      }),
      'components[1].internalRange',
      'not on a step',
    ],
    ['half a cell', quay({ ...supply, id: 'B2', cells: 0.5 }), 'components[1].cells', 'wrong type'],
    [
      'a lamp without ratings',
      quay({ id: 'L1', kind: 'lamp', from: 'a', to: '0' }),
      'components[1]',
      'lamp needs two ratings',
    ],
    [
      'a lamp with three',
      quay({ id: 'L1', kind: 'lamp', from: 'a', to: '0', ratedVoltage: 6, ratedPower: 3, ratedCurrent: 0.5 }),
      'components[1]',
      'lamp needs two ratings',
    ],
    [
      'terminals beside a supply',
      { version: 1, components: [supply], terminals: ['a', '0'] },
      'terminals',
      'terminals with a supply',
    ],
    ['neither supply nor terminals', { version: 1, components: [resistor] }, '', 'terminals missing'],
    ['one terminal', { version: 1, components: [resistor], terminals: ['a'] }, 'terminals', 'wrong type'],
    [
      'a terminal nowhere',
      { version: 1, components: [resistor], terminals: ['a', 'z'] },
      'terminals',
      'terminal unknown',
    ],
  ];
  for (const [name, json, path, code] of table) {
    void it(`with ${name} is refused at “${path}”: ${code}`, () => {
      const error = refusal(json);
      assert.deepEqual([error.path, error.code], [path, code]);
      assert.ok(error.message.startsWith(path));
      assert.match(error.message, /[.?]$/);
    });
  }

  void it('suggests what was probably meant', () => {
    assert.equal(refusal(quay({ ...resistor, kind: 'resistr' })).suggestion, 'resistor');
    assert.equal(refusal({ version: 1, component: [] }).suggestion, 'components');
    assert.equal(refusal(quay({ ...resistor, condition: 'brokn' })).suggestion, 'broken');
    assert.equal(refusal(quay({ ...supply, id: 'B2', internalRang: {} })).suggestion, 'internalRange');
  });

  void it('of more than 200,000 components is refused before any is read', () => {
    assert.equal(
      refusal({ version: 1, components: new Array<null>(200_001).fill(null) }).code,
      'too many components',
    );
  });

  void it('never fails otherwise than by a sentence, whatever the JSON', () => {
    const words = fc.constantFrom(
      'version',
      'components',
      'terminals',
      'id',
      'kind',
      'from',
      'to',
      'resistor',
      'supply',
      'range',
      'min',
      '__proto__',
      'emf',
      'condition',
      'fault',
      'broken',
      'internalRange',
      'internalResistance',
      'form',
      'cells',
    );
    const { tree } = fc.letrec<{ tree: unknown }>((tie) => ({
      tree: fc.oneof(
        { maxDepth: 4 },
        fc.oneof(words, fc.integer(), fc.double(), fc.string(), fc.boolean(), fc.constant(null)),
        fc.array(tie('tree'), { maxLength: 4 }),
        fc.dictionary(words, tie('tree'), { maxKeys: 5 }),
      ),
    }));
    const mutated = fc
      .tuple(words, tree, fc.constantFrom(resistor, { ...supply, id: 'B2' }))
      .map(([key, value, component]) => quay({ ...component, [key]: value }));
    fc.assert(
      fc.property(fc.oneof(tree, mutated), (json) => {
        try {
          circuitFrom(json);
        } catch (error) {
          assert.ok(error instanceof CircuitFormatError && error.message.length < 400);
        }
      }),
      { numRuns: 5000 },
    );
  });
});

void describe('a circuit as JSON', () => {
  void it('is read back as the same circuit, whatever can be turned and whatever is broken or bridged', () => {
    fc.assert(
      fc.property(circuits, (circuit) => {
        const written = circuitToJSON(circuit);
        assert.deepEqual(circuitToJSON(circuitFrom(JSON.parse(JSON.stringify(written)))), written);
        written.components.forEach(({ condition }, place) =>
          assert.equal(condition, circuit.components[place]?.condition),
        );
      }),
    );
  });

  void it('is read back as the same circuit, after a journey as text', () => {
    const circuit = circuitFrom({
      version: 1,
      components: [
        { ...resistor, resistance: '1/3', tolerance: '0.5' },
        { ...resistor, id: 'R2', resistance: 8, range: { min: 2, max: '40', step: '0.5' }, hidden: true },
        { ...resistor, id: 'R3', resistance: '4.70', range: { min: 1, max: 1000, scale: 'log' } },
        { id: 'S1', kind: 'switch', from: 'a', to: '0', closed: true },
      ],
      terminals: ['a', '0'],
    });
    const again = circuitFrom(JSON.parse(JSON.stringify(circuitToJSON(circuit))));
    assert.deepEqual(circuitToJSON(again), circuitToJSON(circuit));
    assert.deepEqual(
      again.components.map((component) =>
        component.kind === 'resistor' ? component.resistance.value.toFraction() : '',
      ),
      ['1/3', '8', '47/10', ''],
    );
  });
});
