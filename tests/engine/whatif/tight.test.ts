import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  Fraction,
  overTime,
  parseCircuit,
  solveExact,
  sweep,
  thevenin,
  withinTolerance,
  withValue,
  type Circuit,
} from '../../../src/engine/index.ts';

const ohms = fc.integer({ min: 1, max: 50 });
const percent = fc.integer({ min: 1, max: 40 });

/** The least and the most of a quantity over a grid of settings of two loose resistors, exactly. */
function overGrid(
  circuit: Circuit,
  name: string,
  ids: readonly string[],
  cuts: number,
): [Fraction, Fraction] {
  const steps = Array.from({ length: cuts + 1 }, (_, k) => new Fraction(2 * k - cuts, cuts));
  const settings = ids.reduce<readonly Circuit[]>(
    (all, id) =>
      all.flatMap((one) =>
        steps.map((share) => {
          const resistor = circuit.components.find((each) => each.id === id);
          assert.ok(resistor?.kind === 'resistor' && resistor.tolerance);
          const factor = resistor.tolerance.div(100).mul(share).add(1);
          return withValue(one, id, resistor.resistance.value.mul(factor));
        }),
      ),
    [circuit],
  );
  const values = settings.map((one) => solveExact(one).quantity(name) ?? new Fraction(NaN));
  const sorted = values.toSorted((a, b) => a.compare(b));
  const [low, high] = [sorted[0], sorted.at(-1)];
  assert.ok(low && high);
  return [low, high];
}

const text = ({ low, high }: { low: Fraction; high: Fraction }): string[] => [
  low.toFraction(),
  high.toFraction(),
];

void describe('the bounds within tolerance are attained, not only safe', () => {
  const names = ['I_R3', 'V_R1', 'V_R2', 'R_total', 'I_B1', 'V_B1'];
  void it('in series and parallel: exactly the least and the most of the corners', () => {
    fc.assert(
      fc.property(fc.tuple(ohms, ohms, ohms), fc.tuple(percent, percent), ([a, b, c], [p, q]) => {
        const line = `B1 9 V r 3 Ω + R1 ${a} Ω ±${p}% + (R2 ${b} Ω ±${q}% ∥ R3 ${c} Ω)`;
        const circuit = parseCircuit(line);
        for (const name of names) {
          const [low, high] = overGrid(circuit, name, ['R1', 'R2'], 2);
          const found = withinTolerance(circuit, name);
          assert.deepEqual(
            [...text(found), found.proved],
            [...text({ low, high }), true],
            `${name} of ${line}`,
          );
        }
      }),
      { numRuns: 40 },
    );
  });

  void it('in a bridge with two batteries', () => {
    fc.assert(
      fc.property(fc.tuple(ohms, ohms, ohms, ohms), fc.tuple(percent, percent), ([a, b, c, d], [p, q]) => {
        const line = `B1 9 V r 1 Ω + ((R1 ${a} Ω ±${p}% + @p + R2 ${b} Ω) ∥ (R3 ${c} Ω ±${q}% + @q + R4 ${d} Ω)); B2 2 V r 4 Ω @p–@q`;
        const circuit = parseCircuit(line);
        for (const name of ['I_B2', 'V_R1', 'V_p_q', 'I_B1']) {
          const [low, high] = overGrid(circuit, name, ['R1', 'R3'], 2);
          assert.deepEqual(text(withinTolerance(circuit, name)), text({ low, high }), `${name} of ${line}`);
        }
      }),
      { numRuns: 30 },
    );
  });

  // To its load a battery of 6 V with 10 Ω inside gives 36 R/(10 + R)²: 0.9 W at the most, at 10 Ω.
  const peaks = [
    ['the peak lies between the ends', 10, 20, '8/9', '9/10'],
    ['all lies above it', 40, 50, '108/245', '4/5'],
    ['all lies below it', 4, 50, '1/2', '27/32'],
    ['its low end is at it', 20, 50, '27/40', '9/10'],
    ['its high end is at it', 8, 25, '27/32', '9/10'],
  ] as const;
  for (const [name, ohm, loose, low, high] of peaks)
    void it(`of a load's power where ${name} (by hand)`, () => {
      const found = withinTolerance(parseCircuit(`B1 6 V r 10 Ω + R1 ${ohm} Ω ±${loose}%`), 'P_R1');
      assert.deepEqual(text(found), [low, high]);
    });

  void it('of a constant current, from its p.d.', () => {
    // 2 A through 5 Ω ±10 % side by side with 5 Ω: 4.5 ∥ 5 = 45/19 Ω and 5.5 ∥ 5 = 55/21 Ω, four times as many watts.
    const circuit = parseCircuit('source I1 2 A ∥ R1 5 Ω ±10% ∥ R2 5 Ω');
    assert.deepEqual(text(withinTolerance(circuit, 'P_I1')), ['180/19', '220/21']);
    // Inside it the line runs from left to right, so in the branches beside it the current runs against the line.
    assert.deepEqual(text(withinTolerance(circuit, 'V_R2')), ['-110/21', '-90/19']);
  });

  void it('is one value where nothing is loose, and wider with a wider tolerance', () => {
    const at = (tolerance: string): { low: Fraction; high: Fraction } =>
      withinTolerance(parseCircuit(`B1 6 V r 1 Ω + R1 5 Ω${tolerance} + R2 3 Ω`), 'I_R1');
    assert.deepEqual(text(at('')), ['2/3', '2/3']);
    const widths = [1, 2, 5, 10, 20, 50]
      .map((each) => at(` ±${each}%`))
      .map(({ low, high }) => high.sub(low));
    widths.forEach((width, k) => {
      const before = widths[k - 1];
      if (before) assert.ok(width.compare(before) > 0);
    });
  });
});

void describe('what lasts', () => {
  void it('takes its time as a fraction or as the decimal that it is written as', () => {
    const circuit = parseCircuit('B1 6 V + R1 4 Ω');
    assert.equal(overTime(circuit, 'R1', 0.1)?.charge.toFraction(), '3/20');
    assert.equal(overTime(circuit, 'R1', new Fraction(1, 3))?.charge.toFraction(), '1/2');
  });

  void it('is nothing through an ideal voltmeter, and no energy in an ideal ammeter', () => {
    const circuit = parseCircuit('B1 6 V + A1 + R1 4 Ω; V1 across R1');
    const through = (id: string): unknown[] => {
      const found = overTime(circuit, id, 10);
      return [found?.charge.abs().toFraction(), found?.energy.toFraction()];
    };
    assert.deepEqual(through('A1'), ['15', '0']);
    assert.deepEqual(through('V1'), ['0', '0']);
  });
});

void describe('a sweep and an equivalent tell the same story', () => {
  void it('the open p.d. and the short current are where a load goes to the ends of its span', () => {
    fc.assert(
      fc.property(fc.tuple(ohms, ohms, ohms), ([a, b, c]) => {
        const line = `B1 9 V r ${c} Ω + R1 ${a} Ω + @p + R2 ${b} Ω + @q`;
        const seen = thevenin(parseCircuit(`${line}; V1 @p–@q`), 'p', 'q');
        assert.ok(seen);
        const { values } = sweep(
          parseCircuit(`${line}; R9 1 Ω @p–@q`),
          'R9',
          { from: 1e-9, to: 1e9, points: 2 },
          ['I_R9', 'V_R9'],
        );
        const short = Number(seen.emf.div(seen.resistance));
        assert.ok(Math.abs((values['I_R9']?.[0] ?? NaN) - short) < 1e-6 * Math.abs(short));
        assert.ok(
          Math.abs((values['V_R9']?.[1] ?? NaN) - Number(seen.emf)) < 1e-6 * Math.abs(Number(seen.emf)),
        );
      }),
      { numRuns: 60 },
    );
  });

  void it('a straight circuit and one that needs each setting solved have the same values', () => {
    // A constant current is no resistor: each setting is solved by itself; its p.d. is known from Ohm's law.
    const { settings, values } = sweep(
      parseCircuit('source I1 [0..2] 1 A ∥ R1 5 Ω ∥ R2 20 Ω'),
      'I1',
      { from: 0, to: 2, points: 5 },
      ['V_R1', 'I_R2'],
    );
    assert.deepEqual(settings, [0, 0.5, 1, 1.5, 2]);
    settings.forEach((amps, k) => {
      assert.ok(Math.abs((values['V_R1']?.[k] ?? NaN) + 4 * amps) < 1e-12);
      assert.ok(Math.abs((values['I_R2']?.[k] ?? NaN) + amps / 5) < 1e-12);
    });
  });
});
