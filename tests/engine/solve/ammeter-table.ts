import type { Row } from './fault-table.ts';

/** Circuits with ammeters across supplies, across what is no supply, and where they belong. */
export const ammeters: readonly Row[] = [
  {
    what: 'a closed switch and an ideal ammeter across an ideal supply',
    circuit: 'B1 a g 6; S1 a b closed; A1 b g; R1 a g 12',
    faults: ['short circuit: B1 S1 A1'],
    cautions: ['cell shorted: B1', 'ammeter across a supply: A1 B1'],
  },
  {
    what: 'a closed switch and a real ammeter across a supply',
    circuit: 'B1 a g 6; S1 a b closed; A1 b g 1/2; R1 a g 12',
    cautions: ['ammeter across a supply: A1 B1'],
    readings: { I_A1: '12', I_R1: '1/2' },
  },
  {
    what: 'the same switch open, or a lamp in its place: the ammeter is where it belongs',
    circuit: 'B1 a g 6; S1 a b open; A1 b g 1/2; L1 a c 11.5; A2 c g 1/2',
    readings: { I_A1: '0', I_A2: '1/2' },
  },
  {
    what: 'a real ammeter across two cells in a chain, and one across a part of them',
    circuit: 'B1 a b 3/2 1/2; B2 b g 3/2 1/2; A1 a g 1/2; A2 b g 1/2; R1 a g 12',
    cautions: ['ammeter across a supply: A1 B1 B2', 'ammeter across a supply: A2 B2'],
  },
  {
    what: 'an ammeter between two batteries that work against each other side by side: what flows is the difference',
    circuit: 'B1 a g 6 1; A1 a b 1/2; B2 b g 6 1; R1 a g 12',
    readings: { I_A1: '-4/21' },
  },
  {
    what: 'a real ammeter across a battery that is taken out',
    circuit: 'B1 a g 6 1 broken; A1 a g 1/2; B2 c d 3; R1 c d 6',
    remarks: ['cut off: A1', 'broken: B1'],
  },
  {
    what: 'two ammeters one after the other, with a closed switch between them, across a real cell and a lamp: the lamp need not be spoken of',
    circuit: 'B1 a g 3/2 1/2; A1 a b; S1 b c closed; A2 c g; L1 a g 5',
    cautions: ['cell shorted: B1', 'ammeter across a supply: A1 A2 B1'],
    readings: { I_A1: '3', I_A2: '3', I_L1: '0' },
  },
  {
    what: 'an ideal ammeter across a lamp, with a voltmeter there too',
    circuit: 'B1 a g 6; R1 a b 4; L1 b g 8; A1 b g; V1 b g',
    remarks: ['ammeter across: A1 L1'],
    readings: { I_A1: '3/2', I_L1: '0' },
  },
  {
    what: 'the same while a switch in the line is open',
    circuit: 'B1 a g 6; R1 a c 4; S1 c b open; L1 b g 8; A1 b g',
    remarks: ['open loop: S1', 'ammeter across: A1 L1'],
  },
  {
    what: 'a real ammeter across a lamp, and one across a resistor, of a tenth of their resistances and of more',
    circuit: 'B1 a g 6; R1 a b 4; L1 b c 5; A1 b c 1/2; R2 c g 5; A2 c g 3/5',
    remarks: ['ammeter across: A1 L1'],
  },
  {
    what: 'a galvanometer with its shunt',
    circuit: 'B1 a g 6; R1 a b 4; A1 b g 9; R2 b g 1',
    readings: { I_A1: '6/49' },
  },
  {
    what: 'two ammeters one after the other, with a closed switch, across two resistors in a chain, with a voltmeter across one',
    circuit: 'B1 a g 6; R0 a b 4; R1 b c 8; R2 c g 8; V1 c g; A1 b d; S1 d e closed; A2 e g',
    remarks: ['ammeter across: A1 A2 R1 R2'],
  },
  {
    what: 'an ammeter in a branch with a resistor, and one across both',
    circuit: 'B1 a g 6; R0 a b 4; R1 b c 8; A1 c g; A2 b g',
    remarks: ['ammeter across: A2 R1'],
  },
  {
    what: 'ammeters in the line, in each branch, between the middles of a bridge, and across an open switch: they are where they belong',
    circuit:
      'B1 a g 6; A1 a b; R1 b c 1; R2 c d 2; A2 d g; R3 b e 3; R4 e f 4; A3 f g; A4 c e; S1 b h open; A5 b h 1/9; R5 h g 5',
  },
  {
    what: 'an ammeter in the line between two groups of resistors side by side',
    circuit: 'B1 a g 6; R1 a b 1; R2 a b 2; A1 b c; R3 c g 3; R4 c g 4',
  },
  {
    what: 'an ammeter across two lamps side by side, fed by a constant current',
    circuit: 'I1 a g 2; R1 a b 4; L1 b g 8; L2 b g 8; A1 b g',
    remarks: ['ammeter across: A1 L1 L2'],
    readings: { I_A1: '2' },
  },
  {
    what: 'an ammeter across what a constant current flows through, in a chain with a resistor',
    circuit: 'B1 a g 6; R1 a b 4; A1 b g; R2 b c 8; R3 c g 8; I1 c g 1',
    readings: { I_A1: '2', I_R2: '-1/2' },
  },
  {
    what: 'an ammeter across a lamp in a piece without a supply',
    circuit: 'B1 a g 6; R1 a g 4; L1 c d 8; A1 c d; R2 c e 8; A2 d e; R3 e c 4',
    remarks: ['cut off: L1 A1 R2 A2 R3'],
  },
  {
    what: 'an ideal ammeter put across the supply like a voltmeter',
    circuit: 'B1 a g 6; R1 a g 12; A1 a g',
    faults: ['short circuit: B1 A1'],
    cautions: ['cell shorted: B1', 'ammeter across a supply: A1 B1'],
  },
  {
    what: 'two ideal ammeters side by side in a branch',
    circuit: 'B1 a g 6; A1 a b; A2 a b; R1 b g 12',
    faults: ['share undetermined: A1 A2'],
  },
  {
    what: 'an ideal ammeter beside a resistor: it takes the whole current',
    circuit: 'B1 a g 6; A1 a b; R1 a b 5; R2 b g 12',
    remarks: ['ammeter across: A1 R1'],
    readings: { I_A1: '1/2', I_R1: '0', V_R1: '0' },
  },
];
