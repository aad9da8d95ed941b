import type { Row } from './fault-table.ts';

/** Circuits with supplies of constant current: what is wrong with them, and what they read. */
export const constantCurrents: readonly Row[] = [
  {
    what: 'a constant current through a resistor, whose p.d. it makes',
    circuit: 'I1 a g 1/2; R1 a g 12',
    readings: { I_I1: '1/2', V_I1: '6', P_I1: '3', I_R1: '1/2', R_total: '12', I_total: '1/2', P_total: '3' },
  },
  {
    what: 'a wire across a constant current, which is no short circuit',
    circuit: 'I1 a g 1/2; W1 a g; R1 a g 5',
    readings: { I_W1: '1/2', V_I1: '0', P_I1: '0', I_R1: '0', R_total: '0' },
  },
  {
    what: 'a constant current that a supply drives as well: the supply is charged',
    circuit: 'I1 a g 3; R1 a b 2; B1 b g 6',
    cautions: ['driven backwards: B1'],
    readings: { V_I1: '12', I_B1: '-3', P_I1: '36', P_B1: '-18', P_total: '18' },
  },
  {
    what: 'a constant current behind an open switch',
    circuit: 'I1 a g 1/2; S1 a b open; R1 b g 12',
    faults: ['current without a path: I1 S1'],
  },
  {
    what: 'a constant current into an ideal voltmeter',
    circuit: 'I1 a g 1/2; V1 a g; B1 g c 6; R1 c g 3',
    faults: ['current without a path: I1'],
  },
  {
    what: 'two constant currents into one dead end each',
    circuit: 'I1 a b 1; I2 c b 2; R1 b d 1; R2 d b 3',
    faults: ['current without a path: I1', 'current without a path: I2'],
  },
  {
    what: 'no constant current at all behind an open switch',
    circuit: 'I1 a g 0; S1 a b open; R1 b g 12; B1 b g 6',
    readings: { I_I1: '0', I_R1: '1/2' },
  },
  {
    what: 'a constant current that is taken out',
    circuit: 'I1 a g 2 broken; R1 a g 12; B1 a g 6',
    remarks: ['broken: I1'],
    readings: { I_I1: '0', V_I1: '6', P_I1: '0', I_R1: '1/2' },
  },
  {
    what: 'different constant currents in series',
    circuit: 'I1 a g 1/2; I2 b a 1/4; R1 b g 12',
    faults: ['currents in contradiction: I1 I2'],
  },
  {
    what: 'the same constant current twice in series',
    circuit: 'I1 a g 1/2; I2 b a 1/2; R1 b g 12',
    faults: ['p.d. undetermined: I1 I2'],
  },
  {
    what: 'different constant currents in series, and a resistor across one that takes the difference',
    circuit: 'I1 a g 1/2; I2 b a 1/4; R1 b g 12; R2 a g 4',
    readings: { I_R1: '1/4', I_R2: '1/4', V_I1: '1', V_I2: '2' },
  },
  {
    what: 'constant currents side by side, which add',
    circuit: 'I1 a g 1/2; I2 a g 1/4; R1 a g 12',
    readings: { I_R1: '3/4', V_I1: '9', V_I2: '9', P_total: '27/4' },
  },
  {
    what: 'two constant currents that together bring what a third takes away',
    circuit: 'I1 a g 1/2; I2 a g 1/4; I3 b a 3/4; R1 b g 12',
    faults: ['p.d. undetermined: I1 I2 I3'],
  },
  {
    what: 'a constant current that shares between a wire and an ideal ammeter',
    circuit: 'I1 a g 2; R1 a b 3; W1 b g; A1 b g',
    faults: ['share undetermined: W1 A1'],
  },
  {
    what: 'a short circuit and a constant current without a path',
    circuit: 'B1 a g 6; W1 a g; I1 c g 1',
    faults: ['short circuit: B1 W1', 'current without a path: I1'],
    cautions: ['cell shorted: B1'],
  },
];
