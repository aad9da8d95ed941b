import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { CircuitFormatError, withValue } from '../../../src/engine/circuit/index.ts';
import { formatCircuit } from '../../../src/engine/notation/format/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { solve, solveExact } from '../../../src/engine/solve/index.ts';

const ohms = (line: string, id: string): number => solve(parseCircuit(line)).resistance(id) ?? NaN;

describe('a sensor', () => {
  it('has the resistance that is written at 25 °C in 10 lx, exactly', () => {
    const circuit = parseCircuit('B1 6 V + T1 10 kΩ + LDR1 8 kΩ');
    assert.equal(solveExact(circuit).totalResistance()?.toFraction(), '18000');
  });

  // The table of a thermistor of 10 kΩ and beta 3950 K, as its sellers print it (from memory): 0 °C 33.6 kΩ, 50 °C 3.59 kΩ, 100 °C 0.698 kΩ.
  for (const [at, kilohms] of [
    [0, 33.6],
    [50, 3.59],
    [100, 0.698],
  ] as const) {
    it(`a thermistor of 10 kΩ has ${kilohms} kΩ at ${at} °C`, () => {
      const found = ohms(`B1 6 V + T1 10 kΩ; at ${at} °C`, 'T1') / 1000;
      assert.ok(Math.abs(found / kilohms - 1) < 0.01, `${found}`);
    });
  }

  // IEC 60539-1 defines B25/85 = ln(R25/R85) / (1/T25 − 1/T85), in kelvins (from memory); makers state 2000 K to 6000 K, most near 4000 K.
  it('a thermistor has the B of its equation between 25 °C and 85 °C, as between any two temperatures', () => {
    for (const [low, high] of [
      [25, 85],
      [25, 50],
      [-20, 100],
    ] as const) {
      const [a, b] = [low, high].map((at) => ohms(`B1 6 V + T1 10 kΩ; at ${at} °C`, 'T1'));
      const found = Math.log((a ?? NaN) / (b ?? NaN)) / (1 / (low + 273.15) - 1 / (high + 273.15));
      assert.ok(Math.abs(found - 3950) < 0.01, `${found}`);
    }
  });

  // R/R25 of a part of B25/85 = 3977 K, 1.5 % at 25 °C, from its maker's table (from memory).
  it('a thermistor is within 4 % of a maker’s table from 0 °C to 100 °C', () => {
    for (const [at, share] of [
      [0, 3.265],
      [25, 1],
      [50, 0.3605],
      [85, 0.107],
      [100, 0.0677],
    ] as const) {
      const found = ohms(`B1 6 V + T1 10 kΩ; at ${at} °C`, 'T1') / 10_000;
      assert.ok(Math.abs(found / share - 1) < 0.04, `${at} °C: ${found}`);
    }
  });

  it('an LDR falls as a power of the light between the 0.5 and the 0.9 of makers’ parts, over four decades (from memory)', () => {
    const at = (lux: number): number => ohms(`B1 6 V + LDR1 10 kΩ; at ${lux} lx`, 'LDR1');
    for (const lux of [0.1, 1, 10, 100, 1000]) {
      const power = Math.log10(at(lux) / at(10 * lux));
      assert.ok(power > 0.5 && power < 0.9, `${lux} lx: ${power}`);
    }
  });

  it('an LDR has a fifth of its resistance in ten times the light (common practice: a power of 0.7)', () => {
    const [dim, bright] = [
      ohms('B1 6 V + LDR1 8 kΩ; at 10 lx', 'LDR1'),
      ohms('B1 6 V + LDR1 8 kΩ; at 100 lx', 'LDR1'),
    ];
    assert.ok(Math.abs(dim / bright - 10 ** 0.7) < 1e-5);
  });

  it('is turned by the temperature and the light where it stands', () => {
    const start = parseCircuit('B1 6 V + R1 10 kΩ + T1 10 kΩ');
    const cold = withValue(start, 'temperature', '-5.5');
    assert.ok((solve(cold).voltage('T1') ?? 0) > (solve(start).voltage('T1') ?? 9));
    assert.equal(formatCircuit(cold), 'B1 6 V + R1 10 kΩ + T1 10 kΩ; at -5.5 °C');
    assert.equal(withValue(start, 'temperature', 25), start);
    assert.throws(() => withValue(start, 'temperature', 300), CircuitFormatError);
    assert.throws(() => withValue(start, 'light', 0), /outside 0\.1/);
  });

  it('counts in the total resistance of what the supply drives', () => {
    const found = solve(parseCircuit('B1 0 V r 1 Ω + R1 1 kΩ + T1 10 kΩ; at 50 °C')).totalResistance() ?? 0;
    assert.ok(found > 4500 && found < 4700, `${found}`);
  });
});
