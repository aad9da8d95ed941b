import { expect } from '@open-wc/testing';
import { parseCircuit } from '../../../src/engine/index.ts';
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
});
