import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { maximumPower, overTime, parseCircuit, thevenin } from '../../../src/engine/index.ts';
import { isResistor } from '../../../src/engine/circuit/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { varied, written } from '../../../src/engine/whatif/free.ts';

/** A circuit seen from @p and @q: the e.m.f. and the resistance that take its place, worked out by hand. */
const seen: readonly (readonly [what: string, circuit: string, emf: string, ohms: string])[] = [
  ['a divider', 'B1 12 V + R1 4 Ω + @p + R2 8 Ω + @q + W1; V1 @p–@q', '8', '8/3'],
  ['a divider from the other side', 'B1 12 V + R1 4 Ω + @q + R2 8 Ω + @p + W1; V1 @p–@q', '-8', '8/3'],
  ['a battery with something inside', 'B1 6 V r 2 Ω + @p + R1 10 Ω + @q + W1; V1 @p–@q', '5', '5/3'],
  ['a constant current through a resistor', 'I1 2 A + @p + R1 5 Ω + @q + W1; V1 @p–@q', '10', '5'],
  ['a resistor that is taken out', 'B1 12 V + R1 4 Ω + @p + R2 8 Ω broken + @q + W1; V1 @p–@q', '12', '4'],
  ['a wire across a resistor', 'B1 12 V + R1 4 Ω bridged + @p + R2 8 Ω + @q + W1; V1 @p–@q', '12', '0'],
  [
    'two cells against each other',
    'B1 9 V + R1 3 Ω + @p + R2 3 Ω + B2 3 V reversed + @q + W1; V1 @p–@q',
    '6',
    '3/2',
  ],
];

void describe('what takes the place of a circuit', () => {
  for (const [what, circuit, emf, ohms] of seen)
    void it(`is ${emf} V and ${ohms} Ω: ${what}`, () => {
      const found = thevenin(parseCircuit(circuit), 'p', 'q');
      assert.deepEqual([found?.emf.toFraction(), found?.resistance.toFraction()], [emf, ohms]);
    });

  for (const [circuit, load, ohms, watts] of [
    ['B1 6 V r 2 Ω + R1 10 Ω', 'R1', '2', '9/2'],
    ['B1 12 V + R2 4 Ω + (R3 4 Ω ∥ R1 10 Ω)', 'R1', '2', '9/2'],
    ['B1 12 V + R2 4 Ω + (R3 4 Ω ∥ R1 10 Ω)', 'R3', '20/7', '45/7'],
    ['I1 2 A + (R2 3 Ω ∥ R1 1 Ω)', 'R1', '3', '3'],
  ] as const)
    void it(`gives ${load} most at ${ohms} Ω in ${circuit}`, () => {
      const best = maximumPower(parseCircuit(circuit), load);
      assert.deepEqual([best?.resistance.toFraction(), best?.power.toFraction()], [ohms, watts]);
    });

  void it('gives no load most where nothing is inside, or nothing drives', () => {
    for (const [circuit, load] of [
      ['B1 6 V + R1 10 Ω', 'R1'],
      ['B1 6 V + (R1 10 Ω ∥ R2 5 Ω)', 'R1'],
    ] as const)
      assert.equal(maximumPower(parseCircuit(circuit), load), undefined, circuit);
  });
});

/** A component, or the whole, over some seconds: coulombs, joules and kilowatt-hours. */
const times: readonly (readonly [
  circuit: string,
  of: string,
  seconds: number,
  amounts: readonly string[] | undefined,
])[] = [
  ['B1 6 V + R1 12 Ω', 'R1', 60, ['30', '180', '1/20000']],
  ['B1 6 V + R1 12 Ω', 'total', 60, ['30', '180', '1/20000']],
  ['B1 12 V + L1 12 V 24 W', 'L1', 3600, ['7200', '86400', '3/125']],
  ['B1 6 V + S1 open + R1 12 Ω', 'R1', 60, ['0', '0', '0']],
  ['B1 6 V + R1 12 Ω', 'R1', 0, ['0', '0', '0']],
  ['B1 6 V + R1 12 Ω', 'R1', 1e-9, ['1/2000000000', '3/1000000000', '1/1200000000000000']],
  ['B1 6 V + S1 closed', 'S1', 60, undefined],
];

void describe('over a time', () => {
  for (const [circuit, of, seconds, amounts] of times)
    void it(`of ${seconds} s, ${of} of ${circuit} has ${amounts?.join(' and ') ?? 'no current'}`, () => {
      for (const time of [seconds, written(seconds)]) {
        const found = overTime(parseCircuit(circuit), of, time);
        const { charge, energy, kilowattHours } = found ?? {};
        const told = found && [charge, energy, kilowattHours].map((one) => one?.toFraction());
        assert.deepEqual(told, amounts);
      }
    });
});

void describe('a number taken as it is written', () => {
  for (const [value, exact] of [
    [0.1, '1/10'],
    [-0.3, '-3/10'],
    [1e-9, '1/1000000000'],
    [2.5e-8, '1/40000000'],
    [1e21, `1${'0'.repeat(21)}`],
    [1.5e22, `15${'0'.repeat(21)}`],
    [12, '12'],
  ] as const)
    void it(`is ${exact} for ${value}`, () => {
      assert.equal(written(value).toFraction(), exact);
      assert.equal(written(new Fraction(exact)).toFraction(), exact);
    });
});

void describe('what is varied', () => {
  const part = (line: string, what: string, value: number) => {
    const id = what.replace(/^r_/, '');
    const found = varied(parseCircuit(line), what, value).components.find((each) => each.id === id);
    assert.ok(found);
    return found;
  };

  void it('leaves its range, wherever it goes', () => {
    const resistor = part('B1 6 V + R1 [4..40] 12 Ω', 'R1', 100);
    assert.ok(isResistor(resistor) && resistor.range === undefined);
    assert.equal(resistor.resistance.value.toFraction(), '100');
    const supply = part('B1 [0..12] 6 V r [0..2] 1 Ω + R1 12 Ω', 'B1', 24);
    assert.ok(supply.kind === 'supply' && supply.range === undefined && supply.internalRange === undefined);
    assert.deepEqual(
      [supply.emf.value.toFraction(), supply.internalResistance?.value.toFraction()],
      ['24', '1'],
    );
    const inside = part('B1 [0..12] 6 V r [0..2] 1 Ω + R1 12 Ω', 'r_B1', 5);
    assert.ok(inside.kind === 'supply');
    assert.deepEqual(
      [inside.emf.value.toFraction(), inside.internalResistance?.value.toFraction()],
      ['6', '5'],
    );
    const source = part('I1 [0..3] 2 A + R1 4 Ω', 'I1', 7);
    assert.ok(source.kind === 'source' && source.range === undefined);
    assert.equal(source.current.value.toFraction(), '7');
  });

  void it('keeps what has been done to it, and what is secretly wrong', () => {
    for (const line of ['B1 6 V + L1 12 Ω broken', 'B1 6 V + L1 12 Ω bridged'])
      assert.equal(part(line, 'L1', 5).condition, line.split(' ').at(-1));
    assert.equal(part('B1 6 V + L1 12 Ω secretly broken', 'L1', 5).fault, 'broken');
    const lamp = part('B1 6 V + L1 12 Ω', 'L1', 5);
    assert.ok(lamp.kind === 'resistor' && lamp.condition === undefined && lamp.fault === undefined);
    assert.equal(lamp.resistance.value.toFraction(), '5');
  });
});
