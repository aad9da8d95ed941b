import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  maximumPower,
  overTime,
  parseCircuit,
  solve,
  solveExact,
  sweep,
  thevenin,
} from '../../../src/engine/index.ts';

const ohms = fc.integer({ min: 1, max: 400 });

describe('a sweep', () => {
  it('has at every setting what solving has there', () => {
    const lines: readonly (readonly [string, string])[] = [
      ['B1 6 V + R1 [4..40] 12 Ω + (R2 8 Ω ∥ R3 5 Ω)', 'R1'],
      ['B1 [0..12] 6 V r 1 Ω + R1 12 Ω + R2 5 Ω', 'B1'],
      ['B1 6 V r [0..2] 1 Ω + R1 12 Ω + R2 5 Ω', 'r_B1'],
      ['B1 6 V + R1 [100..1000] 500 Ω + LED1', 'R1'],
    ];
    for (const [line, what] of lines) {
      const { settings, values } = sweep(parseCircuit(line), what, undefined, ['I_R1', 'V_R1', 'P_R1']);
      assert.equal(settings.length, 101);
      for (const place of [0, 17, 50, 100]) {
        const setting = settings[place] ?? NaN;
        const fixed = line.replace(
          /(r )?\[[^\]]*\] [\d.]+/,
          (_, inside: string | undefined) => `${inside ?? ''}${setting}`,
        );
        const wanted = solve(parseCircuit(fixed));
        for (const name of ['I_R1', 'V_R1', 'P_R1']) {
          const [found, expected] = [values[name]?.[place] ?? NaN, wanted.quantity(name) ?? NaN];
          assert.ok(
            Math.abs(found - expected) <= 1e-12 * Math.max(1, Math.abs(expected)),
            `${line} ${name} at ${setting}`,
          );
        }
      }
    }
  });

  it('follows the temperature, and leaves a gap where there is no value', () => {
    const cold = sweep(
      parseCircuit('B1 6 V + R1 10 kΩ + T1 10 kΩ'),
      'temperature',
      {
        from: 0,
        to: 100,
        points: 11,
      },
      ['V_T1'],
    );
    const volts = cold.values['V_T1'] ?? [];
    assert.ok(volts.every((value, k) => k === 0 || (value ?? 9) < (volts[k - 1] ?? 0)));
    const gap = sweep(parseCircuit('B1 6 V + R1 [0..10] 5 Ω'), 'R1', undefined, ['R_total', 'I_R1']);
    assert.equal(gap.values['I_R1']?.[0], undefined);
    assert.ok(Math.abs((gap.values['I_R1']?.[100] ?? 0) - 0.6) < 1e-12);
    assert.throws(() => sweep(parseCircuit('B1 6 V + R1 5 Ω'), 'R1', undefined, ['I_R1']), /R1 has no range/);
  });
});

describe('the Thévenin equivalent', () => {
  it('drives any load as the circuit does', () => {
    fc.assert(
      fc.property(fc.tuple(ohms, ohms, ohms, ohms, ohms, ohms), ([a, b, c, d, e, load]) => {
        const bridge = `B1 9 V r 1 Ω + ((R1 ${a} Ω + @p + R2 ${b} Ω) ∥ (R3 ${c} Ω + @q + R4 ${d} Ω)) + R5 ${e} Ω`;
        const seen = thevenin(parseCircuit(bridge + '; V1 @p–@q'), 'p', 'q');
        assert.ok(seen);
        const with_ = solveExact(parseCircuit(`${bridge}; R6 ${load} Ω @p–@q`)).current('R6');
        assert.equal(with_?.toFraction(), seen.emf.div(seen.resistance.add(load)).toFraction());
      }),
      { numRuns: 1000 },
    );
  });

  it('shows the load that takes most: as many ohms as are inside, and a quarter of E²/r', () => {
    const best = maximumPower(parseCircuit('B1 6 V r 2 Ω + R1 10 Ω'), 'R1');
    assert.deepEqual([best?.resistance.toFraction(), best?.power.toFraction()], ['2', '9/2']);
    assert.equal(maximumPower(parseCircuit('B1 6 V + R1 10 Ω'), 'R1'), undefined);
  });
});

describe('over a time', () => {
  it('charge is current times time, energy power times time, and a kilowatt-hour is 3.6 MJ', () => {
    const lamp = overTime(parseCircuit('B1 12 V + L1 12 V 24 W'), 'L1', 3600);
    assert.deepEqual(
      [lamp?.charge.toFraction(), lamp?.energy.toFraction(), lamp?.kilowattHours.toFraction()],
      ['7200', '86400', '3/125'],
    );
    assert.equal(overTime(parseCircuit('B1 12 V + W1'), 'W1', 1), undefined);
  });
});

describe('what passes in a time', () => {
  it('is told of the one supply as a total, and of what has a curve as near as its readings', () => {
    const lamp = parseCircuit('B1 12 V + L1 12 V 24 W filament + A1');
    const found = overTime(lamp, 'L1', 3600);
    assert.ok(Math.abs(Number(found?.kilowattHours) - 0.024) < 1e-9);
    const whole = overTime(parseCircuit('B1 12 V + (L1 6 Ω ∥ L2 6 Ω)'), 'total', 3600);
    assert.equal(whole?.kilowattHours.toFraction(), '6/125');
    assert.equal(whole.charge.toFraction(), '14400');
  });
});
