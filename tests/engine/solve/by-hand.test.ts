// Circuits of a model harbour, worked by hand: the working is what a teacher would write beside the drawing.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { solve, solveExact } from '../../../src/engine/solve/index.ts';
import { read } from './agreement.ts';
import { short } from './short.ts';

interface Worked {
  readonly what: string;
  /** See `short.ts`. */
  readonly circuit: string;
  readonly working: string;
  readonly readings: Readonly<Record<string, string>>;
}

const table: readonly Worked[] = [
  {
    what: 'two quay lights in a chain',
    circuit: 'B1 a g 6; L1 a b 10; L2 b g 20',
    working: 'R = 10 + 20 = 30; I = 6/30 = 1/5; V1 = 10/5 = 2; V2 = 20/5 = 4; P2 = 4 · 1/5',
    readings: { R_total: '30', I_total: '1/5', V_L1: '2', V_L2: '4', P_L2: '4/5' },
  },
  {
    what: 'two quay lights side by side',
    circuit: 'B1 a g 12; L1 a g 6; L2 a g 12',
    working: 'I1 = 12/6 = 2; I2 = 12/12 = 1; I = 3; R = 12/3 = 4',
    readings: { I_L1: '2', I_L2: '1', I_total: '3', R_total: '4', P_total: '36' },
  },
  {
    what: 'a long cable to two lamps side by side',
    circuit: 'B1 a g 12; R1 a b 2; L1 b g 6; L2 b g 3',
    working: '6 ∥ 3 = 2; R = 4; I = 12/4 = 3; V across the cable 2 · 3 = 6, 6 left; I1 = 6/6, I2 = 6/3',
    readings: { R_total: '4', I_R1: '3', V_R1: '6', V_L1: '6', I_L1: '1', I_L2: '2' },
  },
  {
    what: 'two chains side by side that stand at the same potential in their middles',
    circuit: 'B1 a g 9; R1 a p 1; R2 p g 2; R3 a q 2; R4 q g 4',
    working: '9/3 = 3 and 9/6 = 3/2; p is 3 · 2 = 6 above g, q is 3/2 · 4 = 6 above g',
    readings: { I_R1: '3', I_R3: '3/2', V_p_q: '0', I_total: '9/2', R_total: '2' },
  },
  {
    what: 'a lamp and a cell with resistance inside',
    circuit: 'B1 a g 6 1/2; L1 a g 11/2',
    working: 'I = 6/(11/2 + 1/2) = 1; V = 6 − 1 · 1/2 = 11/2; of 6 W 1/2 W stays inside',
    readings: { I_L1: '1', V_B1: '11/2', Pemf_B1: '6', Pr_B1: '1/2', P_L1: '11/2', R_loop: '6' },
  },
  {
    what: 'two quay lights, dim on one cell',
    circuit: 'B1 a g 3/2 1/2; L1 a g 2; L2 a g 2',
    working: '2 ∥ 2 = 1; I = (3/2)/(1 + 1/2) = 1; V = 1 · 1; each lamp 1/2 A, 1/2 W',
    readings: { I_B1: '1', V_B1: '1', I_L1: '1/2', P_L2: '1/2' },
  },
  {
    what: 'two cells in a chain',
    circuit: 'B1 a b 3/2 1/4; B2 b g 3/2 1/4; R1 a g 5/2',
    working: 'E = 3; 1/4 + 1/4 + 5/2 = 3; I = 1; V of each cell 3/2 − 1/4',
    readings: { I_R1: '1', V_R1: '5/2', V_B1: '5/4', V_B2: '5/4' },
  },
  {
    what: 'a battery that a charger drives backwards',
    circuit: 'B1 a g 12 1; B2 a g 6 2',
    working:
      'I = (12 − 6)/(1 + 2) = 2; V = 12 − 2 · 1 = 10; the battery takes 10 · 2, of which 2² · 2 warms it',
    readings: { I_B1: '2', I_B2: '-2', V_B2: '10', P_B2: '-20', Pr_B2: '8', Pemf_B2: '-12' },
  },
  {
    what: 'an ideal ammeter and an ideal voltmeter change nothing',
    circuit: 'B1 a g 6; A1 a b; R1 b c 4; R2 c g 8; V1 c g',
    working: 'I = 6/(4 + 8) = 1/2; V = 8 · 1/2 = 4',
    readings: { I_A1: '1/2', V_A1: '0', V_V1: '4', I_V1: '0' },
  },
  {
    what: 'an ammeter of 1 Ω lowers the current it measures',
    circuit: 'B1 a g 6; A1 a b 1; R1 b g 11',
    working: 'I = 6/(1 + 11) = 1/2, where it was 6/11; the meter takes 1 · 1/2',
    readings: { I_A1: '1/2', V_A1: '1/2', V_R1: '11/2' },
  },
  {
    what: 'a voltmeter of 10 Ω lowers the p.d. it measures',
    circuit: 'B1 a g 6; R1 a b 10; R2 b g 10; V1 b g 10',
    working: '10 ∥ 10 = 5; I = 6/15 = 2/5; V = 5 · 2/5 = 2, where it was 3',
    readings: { I_R1: '2/5', V_V1: '2', I_V1: '1/5', I_R2: '1/5' },
  },
  {
    what: 'one lamp of a chain taken out',
    circuit: 'B1 a g 6; L1 a b 10 broken; L2 b g 20',
    working: 'no current anywhere; V2 = 20 · 0 = 0, so all 6 V stand across the gap',
    readings: { I_total: '0', I_L2: '0', V_L2: '0', V_L1: '6', P_L1: '0' },
  },
  {
    what: 'one lamp of two side by side taken out',
    circuit: 'B1 a g 12; L1 a g 6 broken; L2 a g 12',
    working: 'I2 = 12/12 = 1 as before; I = 1; the 12 V still stand across the empty place',
    readings: { I_L1: '0', I_L2: '1', I_total: '1', V_L1: '12', R_total: '12' },
  },
  {
    what: 'one of the dim quay lights taken out: the other gets brighter',
    circuit: 'B1 a g 3/2 1/2; L1 a g 2 broken; L2 a g 2',
    working: 'I = (3/2)/(2 + 1/2) = 3/5; V = 2 · 3/5 = 6/5; P = 6/5 · 3/5, where it was 1/2',
    readings: { I_L2: '3/5', V_B1: '6/5', P_L2: '18/25' },
  },
  {
    what: 'one lamp of a chain bridged: the other gets brighter',
    circuit: 'B1 a g 6; L1 a b 10 bridged; L2 b g 20',
    working: 'I = 6/20 = 3/10, all through the wire; V2 = 6; P2 = 6 · 3/10',
    readings: { I_L1: '0', V_L1: '0', I_L2: '3/10', V_L2: '6', P_L2: '9/5', R_total: '20' },
  },
  {
    what: 'one of two lamps at the end of a long cable bridged: both go dark',
    circuit: 'B1 a g 12; R1 a b 2; L1 b g 6 bridged; L2 b g 3',
    working: 'only the cable is left: I = 12/2 = 6; P = 12 · 6',
    readings: { I_R1: '6', I_L1: '0', I_L2: '0', V_L2: '0', P_R1: '72' },
  },
  {
    what: 'one of two cells in a chain bridged: the other drives the loop, and it drives its own wire',
    circuit: 'B1 a b 3/2 1/2 bridged; B2 b g 3/2 1/2; R1 a g 1',
    working: 'I = (3/2)/(1/2 + 1) = 1; in the bridged cell (3/2)/(1/2) = 3',
    readings: { I_R1: '1', I_B2: '1', I_B1: '3', V_B1: '0', V_B2: '1', P_R1: '1' },
  },
];

describe('circuits worked by hand', () => {
  for (const { what, circuit, working, readings } of table) {
    it(`${what}: ${working}`, () => {
      const drawn = short(circuit);
      const [exact, live] = [solveExact(drawn), solve(drawn)];
      for (const [name, value] of Object.entries(readings)) {
        assert.equal(read(exact, name).toFraction(), value, name);
        const number = Number(new Fraction(value));
        assert.ok(Math.abs(read(live, name) - number) <= 4e-16 * Math.abs(number), name);
      }
    });
  }
});
