import { expect } from '@open-wc/testing';
import '../../../src/components/value/define.ts';
import type { RheoletValue } from '../../../src/components/value/index.ts';
import { BesideBoard, besideBoard, settled } from '../beside-board.ts';

type Made = BesideBoard<RheoletValue>;
type Attributes = Readonly<Record<string, string>>;

const open = (circuit: string, attributes: Attributes = {}): Promise<Made> =>
  besideBoard<RheoletValue>('rheolet-value', circuit, attributes);
/** Values with these attributes, beside one board. */
async function together(circuit: string, all: readonly Attributes[]): Promise<readonly Made[]> {
  const { page, board } = await open(circuit);
  const values = all.map((attributes) => {
    const value = document.createElement('rheolet-value');
    for (const [name, text] of Object.entries(attributes)) value.setAttribute(name, text);
    page.append(value);
    return new BesideBoard(page, board, value);
  });
  await settled();
  return values;
}
const shownBy = (all: readonly Made[]): readonly string[] => all.map((value) => value.part('value'));
const heard = (made: Made): string => made.texts('.heard')[0] ?? '';

/** A circuit, the working on paper, and what each quantity is written as. */
interface Board {
  readonly name: string;
  readonly circuit: string;
  readonly working: string;
  readonly readings: Readonly<Record<string, string>>;
}

const boards: readonly Board[] = [
  {
    name: 'two quay lights in series',
    circuit: 'B1 6 V + A1 + R1 4 Ω + R2 8 Ω',
    working: '6 V over 12 Ω is 0.5 A; it takes 2 V over 4 Ω and 4 V over 8 Ω',
    readings: {
      E_B1: '6.00 V',
      V_B1: '6.00 V',
      I_B1: '0.500 A',
      P_B1: '3.00 W',
      Pemf_B1: '3.00 W',
      I_A1: '0.500 A',
      R_R1: '4.00 Ω',
      I_R1: '0.500 A',
      V_R1: '2.00 V',
      P_R1: '1.00 W',
      R_R2: '8.00 Ω',
      I_R2: '0.500 A',
      V_R2: '4.00 V',
      P_R2: '2.00 W',
      R_total: '12.0 Ω',
      R_loop: '12.0 Ω',
      I_total: '0.500 A',
      P_total: '3.00 W',
      P_dissipated: '3.00 W',
    },
  },
  {
    name: 'a lamp beside a heater',
    circuit: 'B1 6 V + (R1 12 Ω ∥ L1 6 Ω)',
    working: '6 V drive 0.5 A through 12 Ω and 1 A through 6 Ω, 1.5 A together, as through 4 Ω',
    readings: {
      E_B1: '6.00 V',
      I_B1: '1.50 A',
      P_B1: '9.00 W',
      I_R1: '0.500 A',
      V_R1: '6.00 V',
      P_R1: '3.00 W',
      R_L1: '6.00 Ω',
      I_L1: '1.00 A',
      V_L1: '6.00 V',
      P_L1: '6.00 W',
      R_total: '4.00 Ω',
      R_loop: '4.00 Ω',
      I_total: '1.50 A',
      P_total: '9.00 W',
      P_dissipated: '9.00 W',
    },
  },
  {
    name: 'a bilge pump before two lamps side by side',
    circuit: 'B1 9 V + @p + R1 1 Ω + @q + (L1 3 Ω ∥ L2 6 Ω); V1 @p–@q',
    working: '3 Ω beside 6 Ω are 2 Ω, with 1 Ω 3 Ω, so 3 A, which shares as 2 A and 1 A',
    readings: {
      I_B1: '3.00 A',
      V_B1: '9.00 V',
      P_B1: '27.0 W',
      I_R1: '3.00 A',
      V_R1: '3.00 V',
      P_R1: '9.00 W',
      I_L1: '2.00 A',
      V_L1: '6.00 V',
      P_L1: '12.0 W',
      I_L2: '1.00 A',
      V_L2: '6.00 V',
      P_L2: '6.00 W',
      V_p_q: '3.00 V',
      R_total: '3.00 Ω',
      I_total: '3.00 A',
      P_total: '27.0 W',
    },
  },
  {
    name: 'a battery with internal resistance',
    circuit: 'B1 6 V r 1 Ω + R1 11 Ω',
    working: '6 V over 12 Ω is 0.5 A; 0.5 V are lost over the internal 1 Ω',
    readings: {
      E_B1: '6.00 V',
      r_B1: '1.00 Ω',
      I_B1: '0.500 A',
      V_B1: '5.50 V',
      P_B1: '2.75 W',
      Pemf_B1: '3.00 W',
      Pr_B1: '0.250 W',
      V_R1: '5.50 V',
      P_R1: '2.75 W',
      R_total: '11.0 Ω',
      R_loop: '12.0 Ω',
      I_total: '0.500 A',
      P_dissipated: '3.00 W',
    },
  },
  {
    name: 'a supply that charges a cell',
    circuit: 'B1 9 V + B2 3 V r 2 Ω reversed + R1 10 Ω',
    working: '9 V against 3 V leave 6 V over 12 Ω, so 0.5 A; the cell has 3 V and 1 V at its terminals',
    readings: {
      E_B1: '9.00 V',
      I_B1: '0.500 A',
      V_B1: '9.00 V',
      P_B1: '4.50 W',
      E_B2: '3.00 V',
      r_B2: '2.00 Ω',
      I_B2: '0.500 A',
      V_B2: '4.00 V',
      P_B2: '2.00 W',
      Pemf_B2: '1.50 W',
      Pr_B2: '0.500 W',
      I_R1: '0.500 A',
      V_R1: '5.00 V',
      P_R1: '2.50 W',
      R_total: '—',
      I_total: '—',
      R_loop: '—',
    },
  },
  {
    name: 'a sensor’s network between two terminals',
    circuit: 'R1 12 Ω ∥ (R2 4 Ω + R3 8 Ω)',
    working: '12 Ω beside 12 Ω are 6 Ω, and without a supply nothing flows',
    readings: {
      R_R1: '12.0 Ω',
      R_R2: '4.00 Ω',
      R_R3: '8.00 Ω',
      R_total: '6.00 Ω',
      I_R1: '—',
      V_R2: '—',
      P_R3: '—',
      P_total: '—',
    },
  },
  {
    name: 'a loop that a switch opens',
    circuit: 'B1 6 V + S1 open + R1 12 Ω',
    working: 'no current, so nothing across the resistor and all 6 V across the gap',
    readings: {
      E_B1: '6.00 V',
      V_B1: '6.00 V',
      I_B1: 'no current',
      R_R1: '12.0 Ω',
      I_R1: 'no current',
      V_S1: '6.00 V',
      I_S1: 'no current',
      R_total: 'no path for a current',
      R_loop: 'no path for a current',
      I_total: 'no current',
    },
  },
  {
    name: 'a supply with nothing but an ammeter across it',
    circuit: 'B1 6 V + A1',
    working: 'nothing limits the current, so only what is given can be read',
    readings: {
      E_B1: '6.00 V',
      I_B1: '—',
      P_B1: '—',
      I_A1: '—',
      R_total: '—',
      I_total: '—',
      P_total: '—',
    },
  },
];

for (const { name, circuit, working, readings } of boards)
  it(`${name}: ${working}`, async () => {
    const names = Object.keys(readings);
    const values = await together(
      circuit,
      names.map((of) => ({ of })),
    );
    const shown = values.map((value, place) => [names[place], value.part('value') || value.part('problem')]);
    expect(Object.fromEntries(shown)).to.deep.equal(readings);
  });

describe('a reading that cannot exist has its reason for those who hear it, and behind a dash for those who point at it', () => {
  for (const [circuit, of, reason] of [
    [
      'B1 9 V + B2 3 V + R1 12 Ω',
      'R_total',
      'R_total is not defined with several supplies; ask for I_B1 or I_B2.',
    ],
    [
      'B1 9 V + B2 3 V + R1 12 Ω',
      'I_total',
      'I_total is not defined with several supplies; ask for I_B1 or I_B2.',
    ],
    ['R1 12 Ω ∥ R2 4 Ω', 'I_R1', 'I_R1 is not defined without a supply.'],
    ['R1 12 Ω ∥ R2 4 Ω', 'P_total', 'P_total is not defined without a supply.'],
    ['B1 6 V + S1 open + R1 12 Ω', 'R_total', 'no path for a current'],
    ['B1 6 V + S1 open + R1 12 Ω', 'I_R1', 'no current'],
    ['B1 6 V + A1', 'I_A1', 'The circuit has a fault, so there is no reading.'],
    ['B1 6 V + S1 open + R1 12 Ω', 'R_S1', 'S1 conducts nothing, so its resistance is not a number.'],
    ['B1 6 V + S1 open + R1 5 Ω + S2 open', 'V_S1', 'no steady reading'],
  ] as const)
    it(`${of} of ${circuit}: ${reason}`, async () => {
      const made = await open(circuit, { of });
      expect(heard(made)).to.equal(reason);
      const [seen] = made.all('[part="value"]');
      expect(seen?.title).to.equal(made.part('value') === '—' ? reason : '');
    });
});

describe('the number of figures', () => {
  // 10 V over 7 Ω: 1.428571… A.
  const cases = [
    ['1', '1 A'],
    ['2', '1.4 A'],
    ['3', '1.43 A'],
    ['4', '1.429 A'],
    ['5', '1.4286 A'],
    ['6', '1.42857 A'],
    ['0', '1.43 A'],
    ['−2', '1.43 A'],
    ['many', '1.43 A'],
  ] as const;
  it('is that which is asked for, from one to six, else that of the course', async () => {
    const asked = cases.map(([figures]) => ({ of: 'I_R1', figures }));
    expect(shownBy(await together('B1 10 V + R1 7 Ω', asked))).to.deep.equal(cases.map(([, shown]) => shown));
  });
});

describe('the unit fixes the prefix', () => {
  const line = 'B1 5 V + R1 2 kΩ'; // 2.5 mA, 12.5 mW
  const cases = [
    ['I_R1', '', '2.50 mA', '2.50 milliamperes'],
    ['I_R1', 'mA', '2.50 mA', '2.50 milliamperes'],
    ['I_R1', 'µA', '2500 µA', '2500 microamperes'],
    ['I_R1', 'A', '0.00250 A', '0.00250 amperes'],
    ['V_R1', 'mV', '5000 mV', '5000 millivolts'],
    ['V_R1', 'kV', '0.00500 kV', '0.00500 kilovolts'],
    ['P_R1', 'W', '0.0125 W', '0.0125 watts'],
    ['P_R1', 'mW', '12.5 mW', '12.5 milliwatts'],
    ['R_R1', 'Ω', '2000 Ω', '2000 ohms'],
    ['R_R1', 'kΩ', '2.00 kΩ', '2.00 kiloohms'],
    ['R_R1', 'MΩ', '0.00200 MΩ', '0.00200 megaohms'],
  ] as const;
  it('for the eye and for the ear', async () => {
    const made = await together(
      line,
      cases.map(([of, unit]) => ({ of, unit })),
    );
    expect(made.map((each) => [each.part('value'), heard(each)])).to.deep.equal(
      cases.map(([, , shown, said]) => [shown, said]),
    );
  });

  const refused = [
    ['I_R1', 'V'],
    ['I_R1', 'ma'],
    ['V_R1', 'A'],
    ['P_R1', 'J'],
    ['R_R1', 'ohm'],
    ['E_B1', 'kilovolts'],
  ] as const;
  it('and what is no unit of a reading is refused with a sentence', async () => {
    const made = await together(
      line,
      refused.map(([of, unit]) => ({ of, unit })),
    );
    for (const [place, [, unit]] of refused.entries()) {
      expect(made[place]?.part('problem')).to.contain(`“${unit}” is not a unit of this reading`);
      expect(made[place]?.all('[part=value]')).to.have.length(0);
    }
  });
});

describe('a sign or a fraction is shown where it is asked for', () => {
  const charging = 'B1 9 V + B2 3 V reversed + R1 9 Ω + A1 reversed'; // 6 V over 9 Ω: two thirds of an ampere
  const cases = [
    ['I_A1', '', '0.667 A'],
    ['I_A1', 'magnitude', '0.667 A'],
    ['I_A1', 'signed', '−0.667 A'],
    ['I_A1', 'fraction', '2/3 A'],
    ['I_A1', 'upside down', '0.667 A'],
    ['I_R1', 'signed', '0.667 A'],
    ['P_B2', 'signed', '−2.00 W'],
    ['P_B2', 'magnitude', '2.00 W'],
    ['P_B1', 'signed', '6.00 W'],
    ['P_B1', 'fraction', '6 W'],
    ['V_R1', 'fraction', '6 V'],
    ['I_B2', 'signed', '−0.667 A'],
  ] as const;
  it('of currents, p.d.s and powers', async () => {
    const asked = cases.map(([of, as]) => ({ of, as }));
    expect(shownBy(await together(charging, asked))).to.deep.equal(cases.map(([, , shown]) => shown));
  });
});

describe('a class has its own way of writing', () => {
  const line = 'B1 9.0 V + R1 7.0 Ω'; // 1.2857… A, 11.571… W
  for (const [course, of, shown] of [
    ['', 'I_R1', '1.29 A'],
    ['comma', 'I_R1', '1,29 A'],
    ['point', 'I_R1', '1.29 A'],
    ['2', 'I_R1', '1.3 A'],
    ['2 comma', 'I_R1', '1,3 A'],
    ['COMMA 4', 'I_R1', '1,286 A'],
    ['as-given', 'I_R1', '1.3 A'],
    ['as-given comma', 'P_R1', '12 W'],
    ['U', 'V_R1', '9.00 V'],
    ['voltage U 5', 'P_R1', '11.571 W'],
    ['7', 'I_R1', '1.29 A'],
    ['1', 'I_R1', '1.29 A'],
    ['comma point', 'I_R1', '1.29 A'],
    ['nonsense 2', 'I_R1', '1.3 A'],
  ] as const)
    it(`course="${course}" writes ${of} as ${shown}`, async () => {
      const made = await open(line, { of });
      await made.show(line, { course });
      await settled();
      expect(made.part('value')).to.equal(shown);
    });

  it('but an element’s own figures go before those of the course', async () => {
    const made = await open(line, { of: 'I_R1', figures: '5' });
    await made.show(line, { course: '2' });
    expect(made.part('value')).to.equal('1.2857 A');
  });
});
