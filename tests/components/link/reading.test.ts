import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { parseCircuit, readCourse, solve, solveExact, type Component } from '../../../src/engine/index.ts';
import {
  figuresOf,
  readingOf,
  spokenQuantity,
  unitOf,
  type Snapshot,
} from '../../../src/components/link/index.ts';

function snapshot(
  line: string,
  more: Partial<Snapshot> & { readonly live?: boolean } = {},
  course = '',
): Snapshot {
  const circuit = parseCircuit(line);
  const solution = solveExact(circuit);
  const readings = more.live ? solve(circuit) : solution;
  return {
    circuit,
    start: circuit,
    settings: {},
    solution,
    readings,
    covered: false,
    course: readCourse(course).course,
    ...more,
  };
}

const plain = (text: string): string => text.replace(/\s/g, ' ');
const harbour = 'B1 12 V + A1 + R1 [4..40] 20 Ω + L1 4 Ω';

function component(line: string, id: string): Component {
  const found = parseCircuit(line).components.find((each) => each.id === id);
  if (!found) throw new Error(id);
  return found;
}

describe('a reading', () => {
  it('is written as textbooks write it, and heard in words', () => {
    const now = snapshot(harbour);
    expect(plain(readingOf(now, 'I_A1').text)).to.equal('0.500 A');
    expect(readingOf(now, 'I_A1').spoken).to.equal('0.500 amperes');
    expect(plain(readingOf(now, 'P_R1').text)).to.equal('5.00 W');
    expect(readingOf(now, 'P_R1').value).to.equal(5);
  });

  it('is the same exact and live, to the figures that are shown', () => {
    const ohms = fc.integer({ min: 1, max: 1000 });
    fc.assert(
      fc.property(ohms, ohms, ohms, (a, b, c) => {
        const line = `B1 9 V + R1 ${a} Ω + (R2 ${b} Ω ∥ R3 ${c} Ω)`;
        const [exact, live] = [snapshot(line), snapshot(line, { live: true })];
        for (const name of ['V_R2', 'P_R3']) {
          expect(
            Math.abs((readingOf(exact, name).value ?? 0) / (readingOf(live, name).value ?? 0) - 1),
          ).to.be.below(1e-12);
        }
      }),
    );
  });

  it('has the figures and the decimal sign of the course', () => {
    expect(plain(readingOf(snapshot(harbour, {}, '2 comma'), 'I_A1').text)).to.equal('0,50 A');
    expect(figuresOf(snapshot('B1 12 V + R1 20.0 Ω', {}, 'as-given'))).to.equal(2);
    expect(figuresOf(snapshot('B1 6 V + R1 5 Ω', {}, 'as-given')), 'at least two').to.equal(2);
    expect(figuresOf(snapshot('B1 6.00 V + R1 5.000 Ω', {}, 'as-given'))).to.equal(3);
    expect(figuresOf(snapshot('B1 6 V + R1 5 Ω'), 15)).to.equal(15);
    for (const nothing of [0, -1, 2.5, 16, NaN, Infinity])
      expect(figuresOf(snapshot('B1 6 V + R1 5 Ω'), nothing), String(nothing)).to.equal(3);
  });

  it('shares its prefix with the other readings of its kind, unless that would hide it', () => {
    const now = snapshot('B1 6 V + (R1 12 Ω ∥ R2 1200 Ω ∥ R3 12 MΩ)');
    expect(plain(readingOf(now, 'I_R1').text)).to.equal('0.500 A');
    expect(plain(readingOf(now, 'I_R2').text)).to.equal('0.00500 A');
    expect(plain(readingOf(now, 'I_R3').text)).to.equal('500 nA');
  });

  it('keeps its sign only where a sign is asked for', () => {
    const now = snapshot('B1 6 V + R1 12 Ω + A1 reversed');
    expect(plain(readingOf(now, 'I_A1').text)).to.equal('0.500 A');
    expect(plain(readingOf(now, 'I_A1', { as: 'signed' }).text)).to.equal('−0.500 A');
    expect(plain(readingOf(now, 'I_A1', { as: 'fraction' }).text)).to.equal('1/2 A');
  });

  it('is the reason, in words, where there is none', () => {
    expect(readingOf(snapshot('B1 6 V + S1 open + R1 12 Ω'), 'I_R1').text).to.equal('no current');
    expect(readingOf(snapshot('B1 6 V + S1 open + R1 12 Ω'), 'R_total').text).to.equal(
      'no path for a current',
    );
    const short = readingOf(snapshot('B1 6 V + A1'), 'I_A1');
    expect(short).to.deep.equal({ text: '—', spoken: 'The circuit has a fault, so there is no reading.' });
    expect(readingOf(snapshot(harbour), 'I_A7').spoken).to.contain('I_A7');
  });

  it('is covered, and gives no number away, on a board that is covered', () => {
    const reading = readingOf(snapshot(harbour, { covered: true }), 'I_A1');
    expect(reading.text).to.equal('?');
    expect(JSON.stringify(reading)).to.not.match(/\d/);
  });

  it('has the unit of its letter', () => {
    expect(['I_R1', 'V_R1', 'E_B1', 'R_total', 'r_B1', 'Pemf_B1', 'V_p_q'].map(unitOf).join('')).to.equal(
      'AVVΩΩWV',
    );
  });
});

describe('a value as written', () => {
  for (const [line, id, words] of [
    ['B1 6 V + R1 4.7 kΩ', 'R1', '4.7 kiloohms'],
    ['B1 6 V + R1 1 Ω', 'R1', '1 ohm'],
    ['B1 6 V + R1 12.0 Ω', 'R1', '12.0 ohms'],
  ] as const) {
    it(`is heard as ${words}`, () => {
      const resistor = component(line, id);
      expect(resistor.kind === 'resistor' ? spokenQuantity(resistor.resistance) : '').to.equal(words);
    });
  }
});
