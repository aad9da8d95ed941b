import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { CircuitFormatError, circuitFrom } from '../../../src/engine/circuit/index.ts';

const supply = { id: 'B1', kind: 'supply', from: 'a', to: '0', emf: '6' };
const resistor = { id: 'R1', kind: 'resistor', from: 'a', to: '0', resistance: '12' };
const quay = (...components: readonly unknown[]) => ({ version: 1, components: [supply, ...components] });
const changed = (fields: object) => quay({ ...resistor, ...fields });
const network = (fields: object) => ({ version: 1, components: [resistor], ...fields });

/** What stands in a file, and the whole sentence with which it is refused. */
const refusals: readonly (readonly [what: string, json: unknown, sentence: string])[] = [
  ['a number', 7, 'Expected an object, found 7.'],
  ['a text', 'B1 6 V', 'Expected an object, found B1 6 V.'],
  ['nothing', undefined, 'Expected an object, found undefined.'],
  ['a list', [supply], 'Expected an object, found a list.'],
  ['no version', { components: [] }, 'The field "version" is missing.'],
  [
    'a version to come',
    { version: 2, components: [] },
    'version: Version 2 of the circuit format is not known here; write "version": 1.',
  ],
  [
    'a field with a slip',
    { version: 1, component: [] },
    '"component" is not a field here; did you mean "components"?',
  ],
  [
    'one component instead of a list',
    { version: 1, components: 'R1' },
    'components: Expected a list of components, found R1.',
  ],
  ['a label instead of a component', quay('R1'), 'components[1]: Expected an object, found R1.'],
  ['a component of no kind', quay({ id: 'R1' }), 'components[1]: The field "kind" is missing.'],
  [
    'a kind with a slip',
    changed({ kind: 'resistr' }),
    'components[1].kind: "resistr" is not a kind of component; did you mean "resistor"?',
  ],
  [
    'a long text for a kind',
    changed({ kind: 'x'.repeat(41) }),
    `components[1].kind: "${'x'.repeat(40)}…" is not a kind of component.`,
  ],
  [
    'a tolerance that is a word',
    changed({ tolerance: 'gold' }),
    'components[1].tolerance: "gold" is not a number that can be read; write 4.7 or 1/3.',
  ],
  [
    'the resistance of a filament',
    quay({ id: 'L1', kind: 'lamp', from: 'a', to: '0', filament: true, resistance: 12 }),
    'components[1]: The filament of L1 has no one resistance: give it two of its voltage, power and current.',
  ],
  ['the field of another kind', changed({ emf: 3 }), 'components[1]: "emf" is not a field here.'],
  [
    'a field of its own with a slip',
    changed({ resistence: 3 }),
    'components[1]: "resistence" is not a field here; did you mean "resistance"?',
  ],
  [
    'a value with its unit',
    changed({ resistance: '12 ohm' }),
    'components[1].resistance: "12 ohm" is not a number that can be read; write 4.7 or 1/3.',
  ],
  [
    'a value far too large',
    changed({ resistance: '1e99' }),
    'components[1].resistance: "1e99" is not a number that can be read; write 4.7 or 1/3.',
  ],
  [
    'a value of true',
    changed({ resistance: true }),
    'components[1].resistance: "true" is not a number that can be read; write 4.7 or 1/3.',
  ],
  [
    'a resistance below nothing',
    changed({ resistance: -1 }),
    'components[1].resistance: This must be 0 or more, not -1.',
  ],
  [
    'a small letter',
    changed({ id: 'r1' }),
    'components[1].id: "r1" cannot be a label; write one such as R1.',
  ],
  [
    'a label twice',
    changed({ id: 'B1' }),
    'components[1].id: B1 is the label of two components; give one of them another number.',
  ],
  [
    'a node without a name',
    changed({ from: '' }),
    'components[1].from: A node is named by a text of 1 to 64 characters, not by an empty text.',
  ],
  ['yes for true', changed({ hidden: 'yes' }), 'components[1].hidden: Expected true or false, found yes.'],
  ['half a range', changed({ range: { min: 2 } }), 'components[1].range: The field "max" is missing.'],
  [
    'a value outside its range',
    changed({ range: { min: 20, max: 40 } }),
    'components[1].range: 12 Ω is outside 20 Ω to 40 Ω.',
  ],
  [
    'a value between two steps',
    changed({ resistance: 13, range: { min: 2, max: 47, step: 5 } }),
    'components[1].range: 13 Ω is not one of the settings; the nearest is 12 Ω.',
  ],
  [
    'a series that is none',
    changed({ range: { min: 1, max: 100, scale: 'E7' } }),
    'components[1].range.scale: Expected "log", "E12" or "E24", found E7.',
  ],
  [
    'a condition with a slip',
    changed({ condition: 'brokn' }),
    'components[1].condition: "brokn" is not a setting of R1; did you mean broken?',
  ],
  [
    'a tolerance of nothing',
    changed({ tolerance: 0 }),
    'components[1].tolerance: This must be more than 0, not 0.',
  ],
  [
    'a tolerance below nothing',
    changed({ tolerance: '-5' }),
    'components[1].tolerance: This must be more than 0, not -5.',
  ],
  [
    'a rated power of nothing',
    changed({ ratedPower: 0 }),
    'components[1].ratedPower: This must be more than 0, not 0.',
  ],
  [
    'half of what a lamp needs',
    quay({ id: 'L1', kind: 'lamp', from: 'a', to: '0', ratedVoltage: '6' }),
    'components[1]: L1 needs its resistance, or two of its voltage, power and current.',
  ],
  [
    'half a changeover switch',
    quay({ id: 'S1a', kind: 'changeover', from: 'a', to: '0', closed: true }),
    'components[1]: S1a is one contact of a changeover switch; the other one, S1b, is missing.',
  ],
  [
    'half a potentiometer',
    quay({ id: 'R1a', kind: 'potentiometer', from: 'a', to: '0', resistance: 5 }),
    'components[1]: R1a is one part of a potentiometer; the other one, R1b, is missing.',
  ],
  [
    'a 0 V mark where nothing is',
    { ...quay(resistor), zero: 'q' },
    'zero: No component is joined to “q”, so the 0 V mark cannot be there.',
  ],
  [
    'terminals beside a supply',
    { ...quay(resistor), terminals: ['a', '0'] },
    'terminals: A circuit with a supply has no terminals; leave them out.',
  ],
  [
    'a network without ends',
    network({}),
    'A network without a supply needs its two terminals, such as "terminals": ["a", "b"].',
  ],
  [
    'a network with an end in the air',
    network({ terminals: ['a', 'z'] }),
    'terminals: No component is joined to the terminal "z".',
  ],
];

void describe('a file that cannot be read', () => {
  for (const [what, json, sentence] of refusals)
    void it(`says where and why: ${what}`, () => {
      assert.throws(
        () => circuitFrom(json),
        (error) => {
          assert.ok(error instanceof CircuitFormatError);
          assert.equal(error.message.replaceAll('\u202f', ' '), sentence);
          return true;
        },
      );
    });

  void it('is refused at the first of several things that are wrong', () => {
    assert.throws(() => circuitFrom(quay({ ...resistor, resistance: -1 }, { id: 'R2' })), {
      path: 'components[1].resistance',
    });
  });
});
