/** One row: a circuit in short, and the codes with their ids that are to be found of it. */
export interface Row {
  readonly what: string;
  /** Components as `id from to value…`: see `short.ts`. */
  readonly circuit: string;
  readonly faults?: readonly string[];
  readonly remarks?: readonly string[];
  readonly cautions?: readonly string[];
  /** Readings to be found, as fractions. */
  readonly readings?: Readonly<Record<string, string>>;
}

/** Faults, remarks, cautions, and what is none of them. */
export const rows: readonly Row[] = [
  {
    what: 'a wire straight across an ideal supply',
    circuit: 'B1 a g 6; W1 a g',
    faults: ['short circuit: B1 W1'],
    cautions: ['cell shorted: B1'],
  },
  {
    what: 'a resistor that is joined to nothing at either end',
    circuit: 'B1 a g 6; R1 a g 12; R2 c d 5',
    remarks: ['cut off: R2', 'loose end: R2'],
  },
  {
    what: 'the same switch open',
    circuit: 'B1 a g 6; S1 a b open; A1 b g; R1 a g 12',
    readings: { I_B1: '1/2', I_A1: '0', V_S1: '6' },
  },
  {
    what: 'a slider at 0 Ω across an ideal supply',
    circuit: 'B1 a g 6; R1 a g 0',
    faults: ['short circuit: B1 R1'],
    cautions: ['cell shorted: B1'],
  },
  {
    what: 'both ends of an ideal supply at one node',
    circuit: 'B1 a a 6; R1 a b 5',
    faults: ['short circuit: B1'],
    cautions: ['cell shorted: B1'],
  },
  {
    what: 'two ideal cells in series with a wire across both',
    circuit: 'B1 a b 3/2; B2 b g 3/2; W1 a g',
    faults: ['short circuit: B1 B2 W1'],
    cautions: ['cell shorted: B1 B2'],
  },
  {
    what: 'two ideal cells joined + to −, + to −',
    circuit: 'B1 a g 6; B2 g a 6; R1 a g 10',
    faults: ['short circuit: B1 B2'],
    cautions: ['cell shorted: B1 B2'],
  },
  {
    what: 'an ideal supply with a supply of 0 V across it',
    circuit: 'B1 a g 6; B2 a g 0',
    faults: ['short circuit: B1 B2'],
    cautions: ['cell shorted: B1'],
  },
  {
    what: 'two supplies, each with a wire across it',
    circuit: 'B1 a g 6; W1 a g; B2 c d 4; W2 c d; R1 g d 1',
    faults: ['short circuit: B1 W1', 'short circuit: B2 W2'],
    cautions: ['cell shorted: B1 B2'],
  },
  {
    what: 'a real cell with a wire across it: it has an answer, and a caution',
    circuit: 'B1 a g 3/2 1/2; W1 a g; R1 a g 5',
    cautions: ['cell shorted: B1'],
    readings: { I_B1: '3', V_B1: '0', Pr_B1: '9/2', I_R1: '0', R_total: '0', R_loop: '1/2', I_W1: '3' },
  },
  {
    what: 'two real cells in series with a wire across both',
    circuit: 'B1 a b 3/2 1/2; B2 b g 3/2 1/2; A1 a g',
    cautions: ['cell shorted: B1 B2', 'ammeter across a supply: A1 B1 B2'],
    readings: { I_A1: '3', V_B1: '0', V_B2: '0' },
  },
  {
    what: 'a real cell with a lamp across it',
    circuit: 'B1 a g 3/2 1/2; L1 a g 5/2',
    readings: { I_B1: '1/2', V_B1: '5/4' },
  },
  {
    what: 'ideal supplies of 6 V and 4 V side by side',
    circuit: 'B1 a g 6; B2 a g 4; R1 a g 10',
    faults: ['supplies in contradiction: B1 B2'],
  },
  {
    what: 'ideal supplies of 6 V and 4 V against each other through a switch',
    circuit: 'B1 a g 6; S1 a b closed; B2 b g 4',
    faults: ['supplies in contradiction: B1 S1 B2'],
  },
  {
    what: 'three ideal supplies in a ring that do not cancel',
    circuit: 'B1 a b 1; B2 b c 2; B3 a c 4',
    faults: ['supplies in contradiction: B1 B2 B3'],
  },
  {
    what: 'a real supply beside an ideal one: it is charged',
    circuit: 'B1 a g 6; B2 a g 4 2',
    cautions: ['driven backwards: B2'],
    readings: { I_B1: '1', I_B2: '-1', V_B2: '6', P_B2: '-6', P_total: '2', P_dissipated: '2' },
  },
  {
    what: 'equal ideal supplies side by side, with a load',
    circuit: 'B1 a g 6; B2 a g 6; R1 a g 12',
    faults: ['share undetermined: B1 B2'],
  },
  {
    what: 'equal ideal supplies side by side, without a load: nothing flows',
    circuit: 'B1 a g 6; B2 a g 6; S1 a b open; R1 b g 12',
    remarks: ['open loop: S1'],
    readings: { I_B1: '0', I_B2: '0', V_S1: '6' },
  },
  {
    what: 'three ideal supplies in a ring that cancel, with nothing else',
    circuit: 'B1 a b 1; B2 b c 2; B3 a c 3',
    remarks: ['open loop:', 'cells in opposition: B3 B1'],
    readings: { I_B3: '0' },
  },
  {
    what: 'a wire beside a closed switch that carries a current',
    circuit: 'B1 a g 6; S1 a b closed; W1 a b; R1 b g 12',
    faults: ['share undetermined: S1 W1'],
  },
  {
    what: 'three ideal branches side by side are one undetermined share',
    circuit: 'B1 a g 6; A1 a b; A2 a b; W1 a b; R1 b g 12',
    faults: ['share undetermined: A1 A2 W1'],
  },
  {
    what: 'two undetermined shares apart',
    circuit: 'B1 a g 6; A1 a b; A2 a b; R1 b c 12; W1 c g; W2 c g',
    faults: ['share undetermined: A1 A2', 'share undetermined: W1 W2'],
  },
  {
    what: 'a wire beside a closed switch on a branch that is open',
    circuit: 'B1 a g 6; R1 a g 12; S1 a b closed; W1 a b; S2 b g open',
    readings: { I_S1: '0', I_W1: '0', V_S2: '6' },
  },
  {
    what: 'a wire beside a closed switch in the middle of a balanced bridge',
    circuit: 'B1 a g 6; R1 a b 1/10; R2 b g 1/5; R3 a c 3/10; R4 c g 3/5; W1 b c; S1 b c closed',
    readings: { I_W1: '0', I_S1: '0', V_b_c: '0' },
  },
  {
    what: 'the same bridge out of balance',
    circuit: 'B1 a g 6; R1 a b 1/10; R2 b g 1/5; R3 a c 3/10; R4 c g 7/10; W1 b c; S1 b c closed',
    faults: ['share undetermined: W1 S1'],
  },
  {
    what: 'a wire from a node to itself',
    circuit: 'B1 a g 6; R1 a g 12; W1 a a',
    readings: { I_W1: '0', I_B1: '1/2' },
  },
  {
    what: 'a lamp bridged by a wire',
    circuit: 'B1 a g 6; L1 a b 8; W1 a b; L2 b g 8',
    readings: { P_L1: '0', I_L2: '3/4' },
  },
  {
    what: 'an ideal voltmeter put in series like an ammeter: it reads the e.m.f.',
    circuit: 'B1 a g 6; V1 a b; R1 b g 12',
    remarks: ['open loop:', 'voltmeter in series: V1 R1'],
    readings: { V_V1: '6', I_R1: '0', V_R1: '0' },
  },
  {
    what: 'one open switch in a chain: it has the whole p.d.',
    circuit: 'B1 a g 6; S1 a b open; L1 b g 12',
    remarks: ['open loop: S1'],
    readings: { V_S1: '6', V_L1: '0', I_B1: '0', P_total: '0' },
  },
  {
    what: 'two open switches in a chain',
    circuit: 'B1 a g 6; S1 a b open; L1 b c 12; S2 c g open',
    remarks: ['open loop: S1 S2'],
    readings: { I_L1: '0', V_L1: '0' },
  },
  {
    what: 'an open switch in the chain and another beside the lamp, which it would only bridge',
    circuit: 'B1 a g 6; S1 a b open; L1 b g 12; S2 b g open',
    remarks: ['open loop: S1'],
  },
  {
    what: 'two branches, each with an open switch',
    circuit: 'B1 a g 6; S1 a b open; L1 b g 12; S2 a c open; L2 c g 12',
    remarks: ['open loop: S1 S2'],
  },
  {
    what: 'a supply that is joined to nothing',
    circuit: 'B1 a g 6',
    remarks: ['open loop:', 'loose end: B1'],
    readings: { V_B1: '6', I_B1: '0' },
  },
  {
    what: 'lamps on a ring of their own beside a circuit that runs',
    circuit: 'B1 a g 6; R1 a g 12; L1 c d 8; L2 d c 8',
    remarks: ['cut off: L1 L2'],
    readings: { I_L1: '0', V_L1: '0', I_R1: '1/2' },
  },
  {
    what: 'a second circuit with a supply of its own',
    circuit: 'B1 a g 6; R1 a g 12; B2 c d 3; R2 c d 6',
    readings: { I_R2: '1/2', V_c_d: '3', I_R1: '1/2' },
  },
  {
    what: 'a supply turned down to 0 V: what it would drive has its resistance all the same',
    circuit: 'B1 a g 0 2; R1 a g 12',
    readings: { I_B1: '0', R_total: '12', R_loop: '14', P_total: '0' },
  },
  {
    what: 'a resistor of 0.5 W that takes 0.5 W',
    circuit: 'B1 a g 5; R1 a g 50 0.5W',
    readings: { P_R1: '1/2' },
  },
  {
    what: 'a resistor of 0.5 W that takes 0.72 W',
    circuit: 'B1 a g 6; R1 a g 50 0.5W',
    cautions: ['over its rating: R1'],
  },
  {
    what: 'a lamp of 6 V 3 W at 6.5 V is within a fifth of its power',
    circuit: 'B1 a g 6.5; L1 a g 6V 3W',
  },
  {
    what: 'a lamp of 6 V 3 W at 7 V is not',
    circuit: 'B1 a g 7; L1 a g 6V 3W',
    cautions: ['over its rating: L1'],
  },
  {
    what: 'a lamp of 2.5 V 0.3 A at 4.5 V',
    circuit: 'B1 a g 4.5; L1 a g 2.5V 0.3A',
    cautions: ['over its rating: L1'],
  },
  {
    what: '60 V is extra-low voltage',
    circuit: 'B1 a g 60; R1 a g 1000',
  },
  {
    what: '61 V is not',
    circuit: 'B1 a g 61; R1 a g 1000',
    cautions: ['not extra-low voltage: B1'],
  },
  {
    what: 'nor are seven batteries of 9 V in a chain',
    circuit:
      Array.from({ length: 7 }, (_, k) => `B${k + 1} n${k + 1} n${k} 9`).join('; ') + '; R1 n7 n0 1000',
    cautions: ['not extra-low voltage: B1 B2 B3 B4 B5 B6 B7'],
  },
  {
    what: 'one of two lamps in a chain taken out: both go dark, and the whole p.d. stands across the gap',
    circuit: 'B1 a g 6; L1 a b 5 broken; L2 b g 10',
    remarks: ['open loop: L1', 'broken: L1'],
    readings: { I_L1: '0', I_L2: '0', V_L1: '6', V_L2: '0', P_L1: '0', I_total: '0' },
  },
  {
    what: 'one of two lamps side by side taken out: the other does not notice',
    circuit: 'B1 a g 6; L1 a g 5 broken; L2 a g 10',
    remarks: ['broken: L1'],
    readings: { I_L1: '0', I_L2: '3/5', V_L1: '6', I_B1: '3/5', R_total: '10' },
  },
  {
    what: 'a wire across one of two lamps in a chain: the other takes the whole p.d.',
    circuit: 'B1 a g 6; L1 a b 5 bridged; L2 b g 10',
    remarks: ['bridged: L1'],
    readings: { I_L1: '0', V_L1: '0', I_L2: '3/5', V_L2: '6', R_L1: '5', R_total: '10' },
  },
  {
    what: 'a wire across one of two lamps side by side: it shorts the supply',
    circuit: 'B1 a g 6; L1 a g 5 bridged; L2 a g 10',
    faults: ['short circuit: B1 L1'],
    remarks: ['bridged: L1'],
    cautions: ['cell shorted: B1'],
  },
  {
    what: 'a wire across an ideal supply',
    circuit: 'B1 a g 6 bridged; R1 a g 12',
    faults: ['short circuit: B1'],
    remarks: ['bridged: B1'],
    cautions: ['cell shorted: B1'],
  },
  {
    what: 'a wire across a cell with resistance inside: E/r goes round, and nothing else gets any',
    circuit: 'B1 a g 3/2 1/2 bridged; R1 a g 5',
    remarks: ['bridged: B1'],
    cautions: ['cell shorted: B1'],
    readings: { I_B1: '3', V_B1: '0', Pr_B1: '9/2', I_R1: '0', R_total: '0', R_loop: '1/2' },
  },
  {
    what: 'a wire across a cell of 0 V: what it would drive has no resistance',
    circuit: 'B1 a g 0 1/2 bridged; R1 a g 5',
    remarks: ['bridged: B1'],
    readings: { I_B1: '0', R_total: '0' },
  },
  {
    what: 'a supply taken out: no current, though its e.m.f. is still written on it',
    circuit: 'B1 a g 6 1 broken; R1 a g 12',
    remarks: ['open loop: B1', 'broken: B1'],
    readings: { I_R1: '0', I_B1: '0', V_R1: '0', E_B1: '6', P_total: '0', Pr_B1: '0', P_B1: '0' },
  },
  {
    what: 'one of two supplies taken out: what it alone drove is cut off',
    circuit: 'B1 a g 6; R1 a g 12; B2 c d 4 broken; R2 c d 8',
    remarks: ['cut off: R2', 'broken: B2'],
    readings: { I_R1: '1/2', I_R2: '0' },
  },
  {
    what: 'a switch open, and a lamp behind it taken out: the loop is open at both',
    circuit: 'B1 a g 6; S1 a b open; L1 b g 5 broken',
    remarks: ['open loop: S1 L1', 'broken: L1'],
  },
  {
    what: 'an ideal voltmeter taken out is no gap',
    circuit: 'B1 a g 6; V1 a b broken; R1 b g 5; S1 a b open',
    remarks: ['open loop: S1', 'broken: V1'],
  },
  {
    what: 'a wire across an open switch closes it',
    circuit: 'B1 a g 6; S1 a b open bridged; R1 b g 12',
    remarks: ['bridged: S1'],
    readings: { I_R1: '1/2', V_S1: '0', I_S1: '0' },
  },
  {
    what: 'a wire across an ideal ammeter: what of the current it shows is not determined',
    circuit: 'B1 a g 6; A1 a b bridged; R1 b g 12',
    faults: ['share undetermined: A1'],
    remarks: ['bridged: A1'],
  },
  {
    what: 'a wire across a real ammeter takes all of its current',
    circuit: 'B1 a g 6; A1 a b 1/2 bridged; R1 b g 12',
    remarks: ['bridged: A1'],
    readings: { I_A1: '0', I_R1: '1/2' },
  },
  {
    what: 'a network with one resistor taken out and one bridged',
    circuit: 'R1 a b 5 bridged; R2 b c 10; R3 b c 10 broken; ends a c',
    remarks: ['broken: R3', 'bridged: R1'],
    readings: { R_total: '10' },
  },
  {
    what: 'as little resistance as a joint has straight across a bench supply: 6 kA',
    circuit: 'B1 a g 6; R1 a g 0.001; R2 a g 12',
    cautions: ['cell shorted: B1'],
    readings: { I_R1: '6000' },
  },
  {
    what: '0.01 Ω in two pieces across it, the most that a joint has',
    circuit: 'B1 a g 6; R1 a b 0.004; R2 b g 0.006; R3 b g 12',
    cautions: ['cell shorted: B1'],
  },
  {
    what: 'a little more than a joint has',
    circuit: 'B1 a g 6; R1 a b 0.005; R2 b g 0.006',
  },
  {
    what: 'two supplies in a chain across next to nothing, the second with some resistance inside',
    circuit: 'B1 a b 6; B2 b g 6 0.1; R1 a g 0.001',
    cautions: ['cell shorted: B1 B2'],
  },
  {
    what: 'the same behind a resistor with a wire across it',
    circuit: 'R2 a c 5 bridged; B1 c g 6; R1 a g 0.001',
    remarks: ['bridged: R2'],
    cautions: ['cell shorted: B1'],
  },
  {
    what: 'a thermocouple with next to nothing across it: 0.5 A, which any lead carries',
    circuit: 'B1 a g 0.0005; R1 a g 0.001',
  },
  {
    what: '10 A through next to nothing, what a school bench may carry, and a little more',
    circuit: 'B1 a b 1.5 0.149; R1 a b 0.001; B2 c d 1.5 0.148; R2 c d 0.001',
    cautions: ['cell shorted: B2'],
  },
  {
    what: 'a supply of 5 kV with 10 MΩ inside, next to nothing across it: 0.5 mA',
    circuit: 'B1 a g 5000 10000000; R1 a g 0.001',
  },
  {
    what: 'the starter motor of a car: 200 A through leads of next to no resistance',
    circuit: 'B1 a b 12 0.01; R1 b c 0.001; R2 c g 0.048; R3 g a 0.001',
  },
  {
    what: 'a line of next to no resistance to a lamp, and an ammeter with its shunt',
    circuit: 'B1 a g 6; R1 a b 0.001; L1 b c 12; A1 c g 0.0005; R2 c g 0.001',
  },
  {
    what: 'a charger and a battery with next to no resistance between: what flows is driven backwards',
    circuit: 'B1 a g 14; R1 a b 0.01; B2 b g 12 0.1',
    remarks: ['cells in opposition: B2 B1'],
    cautions: ['driven backwards: B2'],
  },
];
