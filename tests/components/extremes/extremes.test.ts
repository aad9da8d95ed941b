import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { parseCircuit, settingAt, solve, withValue } from '../../../src/engine/index.ts';
import { extremesOf } from '../../../src/components/extremes/index.ts';

const largest = (line: string, quantity: string): number =>
  Math.max(
    ...extremesOf(parseCircuit(line)).map(({ readings }) => Math.abs(readings.quantity(quantity) ?? 0)),
  );

describe('a circuit with its sliders at their ends', () => {
  for (const [line, quantity, most] of [
    ['B1 6 V + R1 [4..40] 12 Ω', 'I_R1', 1.5],
    ['B1 6 V + R1 [4..40] 12 Ω', 'R_R1', 40],
    ['B1 [-12..6] 6 V + R1 12 Ω', 'I_R1', 1],
    ['B1 6 V r [0..2] 2 Ω + R1 1 Ω', 'I_R1', 6], // 6 V / (2 Ω + 1 Ω) = 2 A at the start
    ['B1 6 V r [0..2] 0.5 Ω + R1 1 Ω', 'r_B1', 2],
    ['B1 [0..12] 6 V r [0..2] 1 Ω + R1 1 Ω', 'I_R1', 6], // one slider at a time: 12 V / 2 Ω, 6 V / 1 Ω
    ['B1 6 V + S1 open + R1 12 Ω', 'I_R1', 0.5],
  ] as const)
    it(`${line}: ${quantity} is ${most} at most`, () => {
      expect(largest(line, quantity)).to.be.closeTo(most, 1e-12);
    });

  it('is worked out once', () => {
    const circuit = parseCircuit('B1 6 V + R1 [4..40] 12 Ω');
    expect(extremesOf(circuit)).to.equal(extremesOf(circuit));
  });

  // A current or a p.d. only rises or only falls over the whole range of one resistance or one e.m.f. (it is (a + b R)/(R + R₀)).
  it('reads nowhere on the way of a slider more than at an end of it, in any current and any p.d.', () => {
    const ohms = fc.integer({ min: 1, max: 99 });
    fc.assert(
      fc.property(
        fc.tuple(ohms, ohms, ohms, ohms),
        fc.constantFrom('R1', 'B1'),
        fc.nat(),
        ([a, b, c, d], what, draw) => {
          const slider = what === 'R1' ? ' [1..100 step 1]' : '';
          const circuit = parseCircuit(
            `B1${what === 'B1' ? ' [0..24 step 1]' : ''} 6 V r 1 Ω + ((R1${slider} ${a} Ω + @p + R2 ${b} Ω) ∥ (R3 ${c} Ω + @q + R4 ${d} Ω)); R5 7 Ω @p–@q`,
          );
          const turned = circuit.components.find(({ id }) => id === what);
          const range = turned && 'range' in turned ? turned.range : undefined;
          if (!range) throw new Error('no slider');
          const there = solve(withValue(circuit, what, settingAt(range, draw % (what === 'R1' ? 100 : 25))));
          const ends = extremesOf(circuit);
          for (const { id } of circuit.components)
            for (const name of [`I_${id}`, `V_${id}`]) {
              const most = Math.max(...ends.map(({ readings }) => Math.abs(readings.quantity(name) ?? 0)));
              expect(Math.abs(there.quantity(name) ?? 0), name).to.be.at.most(most * (1 + 1e-12) + 1e-15);
            }
        },
      ),
    );
  });

  it('feels the heat and the cold, the light and the dark, that there may be', () => {
    const felt = extremesOf(parseCircuit('B1 6 V + R1 10 kΩ + T1 10 kΩ + LDR1 8 kΩ'));
    const ohms = (id: string): number[] => felt.map(({ readings }) => readings.resistance(id) ?? 0);
    // −40 °C and 125 °C; 0.1 lx and 100,000 lx.
    expect(Math.max(...ohms('T1')) / Math.min(...ohms('T1'))).to.be.above(1000);
    expect(Math.max(...ohms('LDR1')) / Math.min(...ohms('LDR1'))).to.be.above(10_000);
    expect(new Set(ohms('R1')).size).to.equal(1);
  });

  it('is the circuit itself where nothing can be turned, and twice as many with a switch that is open', () => {
    expect(extremesOf(parseCircuit('B1 6 V + R1 12 Ω'))).to.have.length(1);
    expect(extremesOf(parseCircuit('B1 6 V + S1 closed + R1 12 Ω'))).to.have.length(1);
    expect(extremesOf(parseCircuit('B1 6 V + S1 open + R1 [4..40] 12 Ω'))).to.have.length(6);
  });
});
