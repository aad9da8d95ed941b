import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import type { Circuit, Component, Range, Resistor } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { numberText, type Quantity } from '../../../src/engine/quantity/index.ts';
import { sameCircuit } from './same-circuit.ts';

/** `B1:2>1 R1:2>1`: each component with its `from` and `to`. */
const joins = ({ components }: Circuit): string =>
  components.map(({ id, from, to }) => `${id}:${from}>${to}`).join(' ');

const terminals = (line: string): readonly string[] | undefined => parseCircuit(line).terminals;

/** The only component, or the first, of a line. */
function first(line: string): Component {
  const [component] = parseCircuit(line).components;
  assert(component, line);
  return component;
}

/** A value in SI units with its prefix, as text. */
const exactly = ({ value, prefix, unit, decimals }: Quantity): string =>
  `${value.toFraction()} ${unit}, written in ${prefix}${unit} with ${decimals ?? 'no'} decimals`;

describe('A line of notation', () => {
  const layouts: readonly (readonly [law: string, line: string, joined: string])[] = [
    [
      'drives its current from left to right: a supply has its positive terminal at its right',
      'B1 6 V + R1 5 Ω',
      'B1:2>1 R1:2>1',
    ],
    ['lets cells in one chain aid each other', 'B1 6 V + B2 3 V + R1 5 Ω', 'B1:2>1 B2:3>2 R1:3>1'],
    [
      'turns a component round by “reversed”',
      'B1 6 V reversed + A1 reversed + R1 5 Ω',
      'B1:1>2 A1:3>2 R1:3>1',
    ],
    ['runs from the first junction of a place to the second', 'B1 6 V @p–@q; R1 5 Ω @p–@q', 'B1:q>p R1:p>q'],
    [
      'closes on itself where its chain holds a supply',
      'R1 5 Ω + (B1 6 V ∥ B2 6 V r 1 Ω)',
      'R1:1>2 B1:1>2 B2:1>2',
    ],
    ['does not close branches, which are closed already', 'B1 6 V ∥ R1 5 Ω', 'B1:2>1 R1:1>2'],
    ['does not close one component', 'B1 6 V', 'B1:2>1'],
    ['does not close a network', 'R1 5 Ω + R2 3 Ω', 'R1:1>2 R2:2>3'],
    ['binds ∥ tighter than +', 'R1 1 Ω ∥ R2 2 Ω + R3 3 Ω', 'R1:1>2 R2:1>2 R3:2>3'],
    ['reads brackets first', 'R1 1 Ω ∥ (R2 2 Ω + R3 3 Ω)', 'R1:1>2 R2:1>3 R3:3>2'],
    ['forgets brackets that say nothing', '((R1 1 Ω) + (R2 2 Ω + (R3 3 Ω)))', 'R1:1>2 R2:2>3 R3:3>4'],
    ['names nodes by junctions', '@in + R1 1 Ω + @mid + R2 2 Ω; V1 @in–@mid', 'R1:in>mid R2:mid>1 V1:in>mid'],
    ['names the point where it closes', 'B1 6 V + R1 1 Ω + @z; A1 @z–@z', 'B1:1>z R1:1>z A1:z>z'],
    ['may be placed components alone', 'R1 2 Ω @a–@b; R2 3 Ω @b–@c; ends @a–@c', 'R1:a>b R2:b>c'],
    [
      'joins what is across a component to its ends',
      'B1 6 V + R1 5 Ω + R2 3 Ω; V1 across R2',
      'B1:2>1 R1:2>3 R2:3>1 V1:3>1',
    ],
    [
      'puts a voltmeter across a supply positive to positive',
      'B1 6 V + R1 5 Ω; V1 across B1',
      'B1:2>1 R1:2>1 V1:2>1',
    ],
    [
      'puts a supply across a supply so that they aid',
      'B1 6 V + R1 5 Ω; B2 6 V r 1 Ω across B1',
      'B1:2>1 R1:2>1 B2:2>1',
    ],
    [
      'keeps placed components behind the chain, in their order',
      'R1 1 Ω; V2 across V1; V1 across R1',
      'R1:1>2 V2:1>2 V1:1>2',
    ],
  ];
  for (const [law, line, joined] of layouts) {
    test(law, () => {
      assert.equal(joins(parseCircuit(line)), joined, line);
    });
  }

  test('without a supply has its ends as terminals, or others that are named', () => {
    assert.deepEqual(terminals('R1 5 Ω + R2 3 Ω'), ['1', '3']);
    assert.deepEqual(terminals('R1 5 Ω ∥ R2 3 Ω'), ['1', '2']);
    assert.deepEqual(terminals('R1 5 Ω + @p + R2 3 Ω; ends @p–@p'), ['p', 'p']);
    assert.deepEqual(terminals('R1 2 Ω @a–@b; R2 3 Ω @b–@c; ends @a–@c'), ['a', 'c']);
    assert.equal(terminals('B1 6 V + R1 5 Ω'), undefined);
    assert.equal(terminals('@a + R1 5 Ω + @b; B1 6 V @b–@a'), undefined);
  });
});

describe('The same circuit', () => {
  const spellings: readonly (readonly [law: string, line: string, ...others: string[]])[] = [
    [
      'is R2 ∥ V1 and “V1 across R2”',
      'B1 6 V + R1 1 Ω + R2 2 Ω; V1 across R2',
      'B1 6 V + R1 1 Ω + (R2 2 Ω ∥ V1)',
    ],
    ['has its values in any order', 'L1 2.5 V 0.3 A', 'L1 0.3 A 2.5 V', 'lamp L1 0.3 A 2.5 V'],
    ['has its properties in any order', 'R1 [2..40] 8 Ω ±5% hidden', 'R1 hidden ±5% 8 Ω [2..40]'],
    ['is open where a switch has no word', 'S1 + R1 5 Ω', 'S1 open + R1 5 Ω', 'switch S1 + R1 5 Ω'],
    ['has one ±', 'R1 5 Ω ±5%', 'R1 5 Ω +-5%', 'R1 5 Ω +/-5%', 'R1 5 Ω ± 5 %', 'R1 5 Ω +−5%'],
    ['has one ∥', 'R1 5 Ω ∥ R2 3 Ω', 'R1 5 Ω || R2 3 Ω', 'R1 5 Ω // R2 3 Ω', 'R1 5 Ω‖R2 3 Ω', 'R1 5Ω||R2 3Ω'],
    ['has one dash', 'R1 5 Ω @a–@b; ends @a–@b', 'R1 5 Ω @a-@b; ends @a — @b', 'R1 5 Ω @a−@b; ends @a‐@b;'],
    [
      'has spaces wherever they please',
      'B1 6 V+R1 5 Ω',
      ' B1\u00a06\u2009V + R1 5\u202fΩ ',
      'B1 6V+R1 5Ω',
      'B1\n6\tV + R1\r\n5 Ω',
    ],
    ['has plain digits in its labels', 'R₁ 5 Ω + R₁₂ 3 Ω', 'R1 5 Ω + R12 3 Ω'],
    ['has an ohm in many letters', 'R1 5 kΩ', 'R1 5 k\u2126', 'R1 5 kohm', 'R1 5kohms', 'R1 5k', 'R1 5K'],
    ['has a micro in three letters', 'R1 5 µΩ', 'R1 5 \u03bcΩ', 'R1 5 uΩ'],
    ['is a battery from more than 2 V', 'B1 6 V + R1 5 Ω', 'battery B1 6 V + R1 5 Ω'],
    ['is a cell up to 2 V', 'B1 2 V + R1 5 Ω', 'cell B1 2 V + R1 5 Ω'],
    ['is a cell turned round down to −2 V', 'B1 -2 V + R1 5 Ω', 'cell B1 -2 V + R1 5 Ω'],
    ['is a battery turned round beyond −2 V', 'B1 -2.5 V + R1 5 Ω', 'battery B1 -2.5 V + R1 5 Ω'],
    ['is a cell within 2 V either way', 'B1 [-2..2] 1 V + R1 5 Ω', 'cell B1 [-2..2] 1 V + R1 5 Ω'],
    ['is a battery from one end on', 'B1 [-6..2] 1 V + R1 5 Ω', 'battery B1 [-6..2] 1 V + R1 5 Ω'],
    ['is a battery where cells are counted', 'B1 2 × 1 V + R1 5 Ω', 'battery B1 2 × 1 V + R1 5 Ω'],
    ['has a kind word only to please', 'B1 6 V + lamp L1 8 Ω', 'B1 6 V + L1 8 Ω'],
    [
      'has remarks and stray tags and quotes round it',
      'B1 6 V + R1 5 Ω',
      'B1 6 V + # the battery\nR1 5 Ω # and its load',
      '“B1 6 V + R1 5 Ω”',
      '<p>„B1 6 V +<br />R1 5 Ω“</p>',
      'B1 6 V # six<br>+ R1 5 Ω',
      '<p>B1 6 V # six</p><p>+ R1 5 Ω</p>',
    ],
    [
      'ends with a semicolon or two',
      'R1 5 Ω; V1 across R1',
      'R1 5 Ω; V1 across R1;',
      'R1 5 Ω;; V1 across R1 ; ;',
    ],
    [
      'has dots of several kinds in a range',
      'R1 [2..40] 8 Ω',
      'R1 [2…40] 8 Ω',
      'R1 [2...40] 8 Ω',
      'R1 [ 2 .. 40 ] 8 Ω',
      'R1 [2 Ω..40 Ω step 1 Ω] 8 Ω',
    ],
    ['has a battery of cells', 'B1 3 × 1.5 V + R1 5 Ω', 'B1 3×1.5V + R1 5 Ω', 'B1 3 x 1.5 V + R1 5 Ω'],
    ['has groups of three digits', 'R1 12 000 Ω', 'R1 12\u202f000 Ω', 'R1 12000 Ω'],
  ];
  for (const [law, line, ...others] of spellings) {
    test(law, () => {
      for (const other of others) sameCircuit(parseCircuit(other), parseCircuit(line), other);
    });
  }
});

describe('A value', () => {
  const resistances: readonly (readonly [line: string, value: string])[] = [
    ['R1 12.0 Ω', '12 Ω, written in Ω with 1 decimals'],
    ['R1 4k7', '4700 Ω, written in kΩ with 1 decimals'],
    ['R1 R47', '47/100 Ω, written in Ω with 2 decimals'],
    ['R1 1M0', '1000000 Ω, written in MΩ with 1 decimals'],
    ['R1 4K7Ω', '4700 Ω, written in kΩ with 1 decimals'],
    ['R1 4,70 kΩ', '4700 Ω, written in kΩ with 2 decimals'],
    ['R1 1.000 Ω', '1 Ω, written in Ω with 3 decimals'],
    ['R1 1/3 Ω', '1/3 Ω, written in Ω with no decimals'],
    ['R1 1.5 × 10³ Ω', '1500 Ω, written in Ω with 0 decimals'],
    ['R1 2e-3 MΩ', '2000 Ω, written in MΩ with 3 decimals'],
    ['R1 5 mΩ', '1/200 Ω, written in mΩ with 0 decimals'],
    ['R1 5 MΩ', '5000000 Ω, written in MΩ with 0 decimals'],
  ];
  for (const [line, value] of resistances) {
    test(`is exact, and kept as written: ${line}`, () => {
      const resistor = first(line);
      assert(resistor.kind === 'resistor');
      assert.equal(exactly(resistor.resistance), value);
    });
  }

  test('of a battery is its cells’ together', () => {
    const battery = first('B1 3 × 1.50 V r 0.5 Ω');
    assert(battery.kind === 'supply' && battery.internalResistance);
    assert.equal(exactly(battery.emf), '9/2 V, written in V with 2 decimals');
    assert.equal(battery.cells, 3);
    assert.equal(exactly(battery.internalResistance), '1/2 Ω, written in Ω with 1 decimals');
  });

  test('of a supply may be negative', () => {
    for (const line of ['B1 -6 V', 'B1 −6 V', 'B1 – 6 V', 'B1 -2 × 3 V']) {
      const supply = first(line);
      assert(supply.kind === 'supply');
      assert.equal(supply.emf.value.toFraction(), '-6', line);
    }
  });

  test('of a meter is its resistance; without one it is ideal', () => {
    assert('resistance' in first('A1 0.5 Ω'));
    assert(!('resistance' in first('V1')));
  });

  test('that could be a label is a label where that label occurs in the line', () => {
    assert.equal(joins(parseCircuit('R1 R47 + R2 5 Ω')), 'R1:1>2 R2:2>3');
    assert.throws(() => parseCircuit('R1 R47 + R47 5 Ω'), { code: 'join missing', column: 4 });
  });
});

describe('A range', () => {
  const range = (line: string): Resistor['range'] => {
    const resistor = first(line);
    assert(resistor.kind === 'resistor');
    return resistor.range;
  };
  const shown = (line: string): string => {
    const found = range(line);
    assert(found);
    return told(found);
  };
  const told = ({ min, max, step, scale }: Range): string => {
    return `${[min, max].map(({ value }) => value.toFraction()).join(' to ')} by ${scale ?? step?.value.toFraction() ?? ''}`;
  };
  const ranges: readonly (readonly [law: string, line: string, settings: string])[] = [
    ['has the unit and the prefix of its value', 'R1 [2..40] 8 kΩ', '2000 to 40000 by 1000'],
    ['may have its own', 'R1 [2 Ω..40] 8 kΩ', '2 to 40000 by 2'],
    ['has a step where one is written', 'R1 [2..40 step 2] 8 Ω', '2 to 40 by 2'],
    ['has the largest of 1, 2, 5 × 10ⁿ that gives 20 steps or more', 'R1 [0..100] 50 Ω', '0 to 100 by 5'],
    ['has a smaller step where the value needs it', 'R1 [0..100] 7 Ω', '0 to 100 by 1'],
    ['has a step below 1 where it is short', 'R1 [0..1] 0.5 Ω', '0 to 1 by 1/20'],
    ['may be even in the logarithm', 'R1 [1..1M log] 1 kΩ', '1000 to 1000000 by log'],
    ['may be a series of preferred values', 'R1 [10..1k E12] 470 Ω', '10 to 1000 by E12'],
    ['may have codes for ends', 'R1 [R47..1k0 E24] 47 Ω', '47/100 to 1000 by E24'],
    ['may stand behind a code, with its own units', 'R1 4k7 [1k..10k]', '1000 to 10000 by 100'],
    ['may be of fractions, with a step', 'R1 [1/3..2 step 1/3] 1 Ω', '1/3 to 2 by 1/3'],
  ];
  const supplies: readonly (readonly [law: string, line: string, settings: string])[] = [
    ['of an e.m.f. is in volts', 'B1 [0..12] 6 V', '0 to 12 by 1/2'],
    ['of an e.m.f. may have negative ends', 'B1 [−6..6] 1.5 V', '-6 to 6 by 1/2'],
    ['of an e.m.f. may be negative', 'B1 [-5 mV..-1] -2 mV', '-1/200 to -1/1000 by 1/5000'],
    ['of an e.m.f. is that of all the cells', 'B1 [0..12 step 1.5] 2 × 1.5 V', '0 to 12 by 3/2'],
    ['of an e.m.f. may stand behind it', 'B1 6 kV [1..10] r [1..2] 1 Ω', '1000 to 10000 by 200'],
  ];
  for (const [law, line, settings] of supplies) {
    test(law, () => {
      const supply = first(line);
      assert(supply.kind === 'supply' && supply.range);
      assert.equal(told(supply.range), settings, line);
    });
  }

  const insides: readonly (readonly [law: string, line: string, settings: string])[] = [
    ['of an internal resistance stands behind r', 'B1 6 V r [0..2] 0.5 Ω', '0 to 2 by 1/10'],
    ['of an internal resistance has its prefix', 'B1 6 V r[0..800]500 mΩ [0..6]', '0 to 4/5 by 1/50'],
    [
      'of an internal resistance may be even in the logarithm',
      'B1 r [1 mΩ..1 log] 1 Ω 6 V',
      '1/1000 to 1 by log',
    ],
  ];
  for (const [law, line, settings] of insides) {
    test(law, () => {
      const supply = first(line);
      assert(supply.kind === 'supply' && supply.internalRange);
      assert.equal(told(supply.internalRange), settings, line);
    });
  }

  for (const [law, line, settings] of ranges) {
    test(law, () => {
      assert.equal(shown(line), settings, line);
    });
  }
});

test('any component may be broken or bridged, whichever way it is told', () => {
  const parts = ['B1 6 V', 'R1 5 Ω', 'L1 8 Ω', 'S1 closed', 'A1', 'V1', 'W1', 'lamp Quay 6 V 3 W'];
  for (const condition of ['broken', 'bridged'] as const) {
    for (const part of parts) {
      const [label = '', ...rest] = part.split(/ (?!Quay)/);
      const plain = first(part);
      for (const line of [`${part} ${condition}`, [label, condition, ...rest].join(' ')]) {
        assert.deepEqual(first(line), { ...plain, condition }, line);
      }
    }
  }
});

test('a tolerance is a percentage', () => {
  const resistor = first('R1 5 Ω ±0.5%');
  assert(resistor.kind === 'resistor' && resistor.tolerance);
  assert.equal(numberText(resistor.tolerance, 1), '0.5');
});
