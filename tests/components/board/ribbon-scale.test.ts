import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import {
  parseCircuit,
  settingAt,
  lastSetting,
  solve,
  withValue,
  type Circuit,
} from '../../../src/engine/index.ts';
import { ribbonScale, scaleFor } from '../../../src/components/board/ribbon-scale.ts';

const widest = (circuit: Circuit, perAmpere: number): number => {
  const solution = solve(circuit);
  return Math.max(...circuit.components.map(({ id }) => Math.abs(solution.current(id) ?? 0))) * perAmpere;
};

/** The circuit with its control R1 at a setting, from 0 to 1 of its range. */
function turned(circuit: Circuit, share: number): Circuit {
  const resistor = circuit.components.find(({ id }) => id === 'R1');
  if (resistor?.kind !== 'resistor' || !resistor.range) throw new Error('no control');
  return withValue(circuit, 'R1', settingAt(resistor.range, Math.round(lastSetting(resistor.range) * share)));
}

describe('the scale of the ribbons', () => {
  it('is the same whatever is turned, so that widths can be compared', () => {
    const circuit = parseCircuit('B1 6 V + A1 + (R1 [4..40] 12 Ω ∥ (A2 + L1 8 Ω))');
    const { perAmpere } = ribbonScale(circuit);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
        const now = turned(circuit, share);
        const currents = Float64Array.from(now.components, ({ id }) => solve(now).current(id) ?? 0);
        expect(scaleFor(currents, ribbonScale(circuit))).to.equal(perAmpere);
      }),
    );
  });

  it('makes the widest ribbon of all settings 16 pixels wide', () => {
    const circuit = parseCircuit('B1 6 V + R1 [4..12] 12 Ω');
    const { perAmpere } = ribbonScale(circuit);
    expect(widest(turned(circuit, 0), perAmpere)).to.be.closeTo(16, 1e-9);
    expect(widest(circuit, perAmpere)).to.be.closeTo(16 / 3, 1e-9);
  });

  for (const line of ['B1 [0..12] 0 V + R1 1 kΩ', 'B1 [-12..6] 6 V + R1 1 kΩ'])
    it(`is that of the supply at its most, so that no current is too thin to be seen: ${line}`, () => {
      expect(ribbonScale(parseCircuit(line)).perAmpere * 0.012).to.be.closeTo(16, 1e-9);
    });

  it('keeps the ribbons of the start at a quarter of that at least', () => {
    const circuit = parseCircuit('B1 6 V + R1 [1 Ω..1 MΩ log] 1 kΩ');
    expect(widest(circuit, ribbonScale(circuit).perAmpere)).to.be.closeTo(4, 1e-9);
  });

  it('shrinks only where a ribbon would be too wide to be drawn', () => {
    const circuit = parseCircuit('B1 6 V + R1 [1 Ω..1 MΩ log] 1 kΩ');
    const scale = ribbonScale(circuit);
    const most = Float64Array.from(turned(circuit, 0).components, () => 6);
    expect(6 * scaleFor(most, scale)).to.be.closeTo(40, 1e-9);
  });

  it('is measured with the switches closed, since an open circuit has no current', () => {
    const [open, closed] = ['open', 'closed'].map((state) =>
      ribbonScale(parseCircuit(`B1 6 V + S1 ${state} + R1 12 Ω`)),
    );
    expect(open).to.deep.equal(closed);
  });

  it('is a number whatever the circuit', () => {
    const lines = [
      'B1 6 V + A1',
      'R1 5 Ω ∥ R2 5 Ω',
      'B1 0 V + R1 5 Ω',
      'B1 6 V + V1',
      'B1 6 V + R1 [0..10] 5 Ω',
      'B1 6 V ∥ B2 9 V',
    ];
    for (const line of lines) {
      const { perAmpere, brightest } = ribbonScale(parseCircuit(line));
      expect(perAmpere, line).to.be.greaterThan(0).and.satisfy(Number.isFinite);
      expect(brightest, line).to.be.greaterThan(0).and.satisfy(Number.isFinite);
    }
  });

  it('lets the lamp with the most power glow most', () => {
    const circuit = parseCircuit('B1 6 V + (L1 8 Ω ∥ L2 16 Ω)');
    const power = solve(circuit).power('L1');
    expect(ribbonScale(circuit).brightest).to.equal(power);
  });
});
