import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { parseCircuit, solve, withinTolerance, withValue, type Circuit } from '../../../src/engine/index.ts';

const shares = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 14, maxLength: 14 });
const tolerances = fc.array(fc.tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 60 })), {
  minLength: 5,
  maxLength: 5,
});

/** The circuit with each resistor somewhere within its tolerance: −1 is its low end, 1 its high one. */
const inside = (circuit: Circuit, share: readonly number[]): Circuit =>
  circuit.components.reduce((at, each, place) => {
    if (each.kind !== 'resistor' || !each.tolerance) return at;
    const ohms = Number(each.resistance.value) * (1 + ((share[place] ?? 0) * Number(each.tolerance)) / 100);
    return withValue(at, each.id, Number(ohms.toFixed(9)));
  }, circuit);

/** Whether the bounds of each quantity hold where the resistors are anywhere. */
function holds(line: string, quantities: readonly string[], share: readonly number[]): void {
  const circuit = parseCircuit(line);
  const solution = solve(inside(circuit, share));
  for (const name of quantities) {
    const { low, high, proved } = withinTolerance(circuit, name);
    const value = solution.quantity(name) ?? NaN;
    const slack = 1e-9 * Math.max(1, Math.abs(value));
    assert.ok(proved);
    assert.ok(value >= Number(low) - slack && value <= Number(high) + slack, `${line}: ${name} ${value}`);
  }
}

const resistors = (parts: readonly (readonly [number, number])[]): string[] =>
  parts.map(([ohms, percent], k) => `R${k + 1} ${ohms} Ω ±${percent}%`);

describe('within tolerance', () => {
  it('a divider of two 10 % resistors lies between the two corners (by hand)', () => {
    const { low, high } = withinTolerance(parseCircuit('B1 6 V + R1 100 Ω ±10% + R2 200 Ω ±10%'), 'V_R2');
    assert.equal(low.toFraction(), '108/29'); // 6 · 180/(110 + 180)
    assert.equal(high.toFraction(), '132/31'); // 6 · 220/(90 + 220)
  });

  it('a load takes most where it is as large as what is inside, which may lie between its ends (by hand)', () => {
    const { low, high } = withinTolerance(parseCircuit('B1 6 V r 10 Ω + R1 10 Ω ±50%'), 'P_R1');
    assert.equal(high.toFraction(), '9/10'); // 36/(4 · 10), at 10 Ω; at 5 and 15 Ω less
    assert.equal(low.toFraction(), '4/5'); // 36 · 5/15²
    const supply = withinTolerance(parseCircuit('B1 6 V r 10 Ω + R1 10 Ω ±50%'), 'P_B1');
    assert.equal(supply.high.toFraction(), '9/10');
    // r I² inside: 10 · (6/25)² and 10 · (6/15)².
    const lost = withinTolerance(parseCircuit('B1 6 V r 10 Ω + R1 10 Ω ±50%'), 'Pr_B1');
    assert.deepEqual([lost.low.toFraction(), lost.high.toFraction()], ['72/125', '8/5']);
  });

  it('the detector of a bridge that may balance takes nothing at the least', () => {
    const bridge = '(R1 10 Ω ±5% + @p + R2 10 Ω ±5%) ∥ (R3 10 Ω + @q + R4 10 Ω); R5 10 Ω @p–@q';
    const [line, rest] = bridge.split('; ');
    for (const five of [rest, `${rest?.replace('10 Ω', '10 Ω ±5%')}`]) {
      const { low, high } = withinTolerance(parseCircuit(`B1 6 V + (${line}); ${five}`), 'P_R5');
      assert.equal(low.n, 0n);
      assert.ok(high.compare(0) > 0);
    }
  });

  it('bounds whatever lies inside, series and parallel', () => {
    fc.assert(
      fc.property(tolerances, shares, (parts, share) => {
        const [a, b, c, d] = resistors(parts);
        const names = ['I_R3', 'V_R1', 'P_R3', 'P_R1', 'R_total', 'P_B1', 'Pr_B1', 'P_total'];
        holds(`B1 9 V r 10 Ω + ${a} + (${b} ∥ (${c} + ${d}))`, names, share);
      }),
      { numRuns: 200 },
    );
  });

  it('bounds whatever lies inside a bridge', () => {
    fc.assert(
      fc.property(tolerances, shares, (parts, share) => {
        const [a, b, c, d, e] = resistors(parts);
        const names = ['I_R5', 'P_R5', 'V_R1', 'P_R1', 'R_total'];
        holds(`B1 9 V r 1 Ω + ((${a} + @p + ${b}) ∥ (${c} + @q + ${d})); ${e} @p–@q`, names, share);
      }),
      { numRuns: 60 },
    );
  });

  it('of twelve resistors series and parallel is proved, and no corner is worse', () => {
    const pairs = Array.from(
      { length: 6 },
      (_, k) => `(R${2 * k + 1} ${k + 3} Ω ±20% ∥ R${2 * k + 2} ${9 - k} Ω ±10%)`,
    );
    const circuit = parseCircuit(`B1 6 V r 1 Ω + ${pairs.join(' + ')}`);
    const { low, high, proved } = withinTolerance(circuit, 'I_R1');
    assert.ok(proved);
    const corners = Array.from({ length: 2 ** 12 }, (_, bits) =>
      Array.from({ length: 13 }, (_, place) => ((bits >> (place - 1)) & 1 ? 1 : -1)),
    ).map((share) => solve(inside(circuit, share)).current('R1') ?? NaN);
    assert.ok(Math.abs(Math.min(...corners) - Number(low)) < 1e-9);
    assert.ok(Math.abs(Math.max(...corners) - Number(high)) < 1e-9);
  });

  it('of twenty resistors is as of a chain by hand: all low, and all high', () => {
    const chain = Array.from({ length: 20 }, (_, k) => `R${k + 1} 10 Ω ±5%`).join(' + ');
    const { low, high } = withinTolerance(parseCircuit(`B1 6 V + ${chain}`), 'I_R1');
    assert.deepEqual([low.toFraction(), high.toFraction()], ['1/35', '3/95']);
  });

  it('says of a bridge with more resistors than can all be tried that there may be something worse', () => {
    const arm = (from: number): string => [0, 1, 2].map((k) => `R${from + k} ${from + k} Ω ±5%`).join(' + ');
    const line = `B1 6 V + ((${arm(1)} + @p + ${arm(4)}) ∥ (${arm(7)} + @q + ${arm(10)})); R13 5 Ω @p–@q`;
    const { low, high, proved } = withinTolerance(parseCircuit(line), 'I_R13');
    assert.equal(proved, false);
    assert.ok(low.compare(high) < 0);
  });

  it('refuses what has no value', () => {
    for (const name of ['I_R9', 'P_R9', 'P_W1x', 'Pr_R1'])
      assert.throws(() => withinTolerance(parseCircuit('B1 6 V + R1 5 Ω ±5%'), name), RangeError);
  });
});
