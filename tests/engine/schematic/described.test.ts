import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { describeCircuit } from '../../../src/engine/schematic/index.ts';

const words = (line: string): string => describeCircuit(parseCircuit(line)).replace(/\u202f/g, ' ');

/** Components in a loop, and what they are called in the description. Names as in IEC 60617 and in school books. */
const parts: readonly (readonly [notation: string, words: string])[] = [
  ['S1 open', 'open switch S1'],
  ['S1 closed', 'closed switch S1'],
  ['push S1 open', 'open push switch S1'],
  ['push S1 closed', 'closed push switch S1'],
  ['M1 12 Ω', 'motor M1 of 12 Ω'],
  ['H1 8 Ω', 'heater H1 of 8 Ω'],
  ['D1', 'diode D1'],
  ['D1 reversed', 'diode D1, turned round'],
  ['LED1 reversed', 'light-emitting diode LED1, turned round'],
  ['LED1', 'light-emitting diode LED1'],
  ['LDR1 1 kΩ', 'light-dependent resistor LDR1 of 1 kΩ'],
  ['T1 2 kΩ', 'thermistor T1 of 2 kΩ'],
  ['F1 2 A', 'fuse F1 of 2 A'],
  ['F1 2 A blown', 'blown fuse F1 of 2 A'],
  ['A1', 'ammeter A1'],
  ['V1', 'voltmeter V1'],
  ['W1', 'wire W1'],
  ['L1 6 Ω', 'lamp L1 of 6 Ω'],
  ['L1 6 V 3 W', 'lamp L1 of 6 V and 3 W'],
  ['L1 6 V 0.5 A filament', 'filament lamp L1 of 6 V and 0.5 A'],
  ['R2 4 Ω', 'resistor R2 of 4 Ω'],
  ['R2 [4..40] 12 Ω', 'variable resistor R2 of 12 Ω (from 4 Ω to 40 Ω)'],
  ['R2 [4..40] 12 Ω hidden', 'variable resistor R2'],
  ['R2 4 Ω hidden', 'resistor R2'],
  ['R2 4 Ω broken', 'resistor R2 of 4 Ω, taken out'],
  ['R2 4 Ω bridged', 'resistor R2 of 4 Ω, with a wire across it'],
  ['B2 1.5 V', 'cell B2 of 1.5 V'],
  ['B2 1.5 V reversed', 'cell B2 of 1.5 V, turned round'],
  ['B2 1.5 V reversed broken', 'cell B2 of 1.5 V, turned round, taken out'],
  ['B2 1.5 V r 0.5 Ω', 'cell B2 of 1.5 V with internal resistance 0.5 Ω'],
  ['B2 1.5 V r 0.5 Ω hidden', 'cell B2'],
];

/** Supplies, from whose positive terminal the loop is told. */
const supplies: readonly (readonly [notation: string, words: string])[] = [
  ['B1 1.5 V', 'cell B1 of 1.5 V'],
  ['B1 6 V', 'battery B1 of 6 V'],
  ['B1 4 × 1.5 V', 'battery B1 of 6.0 V'],
  ['B1 [0..12] 6 V', 'variable supply B1 of 6 V (from 0 V to 12 V)'],
  [
    'B1 [0..12] 6 V r [0..2] 1 Ω',
    'variable supply B1 of 6 V (from 0 V to 12 V) with internal resistance 1 Ω (from 0 Ω to 2 Ω)',
  ],
  ['I1 2 A', 'constant-current supply I1 of 2 A'],
  ['I1 [0..3] 2 A', 'variable constant-current supply I1 of 2 A (from 0 A to 3 A)'],
];

void describe('a diagram in words', () => {
  for (const [notation, told] of parts)
    void it(`calls ${notation} “${told}”`, () => {
      assert.equal(
        words(`B1 6 V + ${notation} + R1 100 Ω`),
        `From the positive terminal of battery B1 of 6 V: ${told}, then resistor R1 of 100 Ω, then back to B1.`,
      );
    });

  for (const [notation, told] of supplies)
    void it(`starts at ${notation}, “${told}”`, () => {
      const id = notation.slice(0, 2);
      assert.equal(
        words(`${notation} + R1 4 Ω`),
        `From the positive terminal of ${told}: resistor R1 of 4 Ω, then back to ${id}.`,
      );
    });

  void it('writes small numbers of branches as words, and more than ten in figures', () => {
    const branches = (count: number): string =>
      words(`B1 6 V + (${Array.from({ length: count }, (_, k) => `R${k + 1} 1 Ω`).join(' ∥ ')})`);
    const counts = ['two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', '11', '12'];
    counts.forEach((word, place) => {
      const told = branches(place + 2);
      assert.match(
        told,
        new RegExp(`: ${word} parallel branches: branch 1 is resistor R1 of 1 Ω; branch 2 is`),
      );
      assert.match(told, new RegExp(`${place + 1} and ${place + 2} join, back to B1\\.$`));
    });
  });

  void it('puts voltmeters across what they are across, and takes them for branches where nothing else is', () => {
    assert.match(
      words('B1 6 V + (R1 3 Ω ∥ V1 ∥ V2)'),
      /R1 of 3 Ω, with voltmeter V1 and voltmeter V2 across it,/,
    );
    assert.match(
      words('B1 6 V + (V1 ∥ V2)'),
      /two parallel branches: branch 1 is voltmeter V1; branch 2 is voltmeter V2; where branches 1 and 2 join,/,
    );
    assert.equal(
      words('(R1 1 Ω ∥ V1) + R2 2 Ω'),
      'Between two terminals: resistor R1 of 1 Ω, with voltmeter V1 across it, then resistor R2 of 2 Ω.',
    );
  });

  void it('tells a network of placed components between its ends', () => {
    assert.equal(
      words('R1 1 Ω @a–@b; R2 2 Ω @b–@c; R3 3 Ω @c–@a; ends @a–@b'),
      'Between two terminals: two parallel branches: branch 1 is resistor R1 of 1 Ω; ' +
        'branch 2 is resistor R3 of 3 Ω, then resistor R2 of 2 Ω.',
    );
  });
});
