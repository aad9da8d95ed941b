import { lessons, type Lesson } from '../../../src/engine/index.ts';

/** What is asked of a line, what is given (else what the line states), and what has to be said of it, found by thinking. */
export interface Lack {
  readonly line: string;
  readonly find: string;
  readonly given?: Readonly<Record<string, string>>;
  readonly course?: Lesson;
  readonly said: string;
}

const series = 'B1 6 V + R1 1 Ω + R2 1 Ω';
const parallel = 'B1 6 V + (R1 1 Ω ∥ R2 1 Ω)';
const real = 'B1 6 V r 1 Ω + R1 1 Ω';
const mixed = 'B1 12 V + R1 1 Ω + (R2 1 Ω ∥ R3 1 Ω)';
const metered = 'B1 6 V + A1 + R1 1 Ω; V1 across R1';
const network = 'R1 6 Ω ∥ R2 3 Ω';

type Row = readonly [line: string, find: string, given: Lack['given'], missing: string];

/** Where one quantity more would be enough. */
const oneMissing: readonly Row[] = [
  [series, 'I_R1', { R_R1: '4', R_R2: '8' }, 'E_B1'],
  [series, 'I_R1', { E_B1: '6', R_R1: '4' }, 'R_R2'],
  [series, 'V_R2', { V_R1: '2' }, 'E_B1'],
  [series, 'R_total', { R_R1: '4' }, 'R_R2'],
  [series, 'P_R1', { V_R1: '3' }, 'R_R1'],
  [series, 'E_B1', { I_R1: '2', R_R1: '3' }, 'R_R2'],
  [series, 'I_R2', {}, 'I_B1'],
  [series, 'W_R1', { P_R1: '3' }, 't'],
  [series, 'Q_R1', { I_R1: '2' }, 't'],
  [series, 'W_R1', undefined, 't'],
  [series, 'W_R2', { I_R2: '2', t: '10' }, 'R_R2'],
  [parallel, 'I_R1', { R_R1: '4' }, 'E_B1'],
  [parallel, 'I_B1', { I_R1: '2' }, 'I_R2'],
  [parallel, 'R_R2', { R_R1: '12', I_R1: '0.5' }, 'I_B1'],
  [parallel, 'R_total', { R_R1: '12' }, 'R_R2'],
  [parallel, 'E_B1', { I_R1: '2' }, 'R_R1'],
  [real, 'I_B1', { E_B1: '6', R_R1: '11' }, 'r_B1'],
  [real, 'r_B1', { E_B1: '6', V_B1: '5.5' }, 'R_R1'],
  [real, 'E_B1', { V_B1: '5', I_B1: '2' }, 'r_B1'],
  [real, 'V_B1', { E_B1: '6', r_B1: '1' }, 'R_R1'],
  [real, 'Pr_B1', { I_B1: '2' }, 'r_B1'],
  [mixed, 'I_R2', { E_B1: '12', R_R1: '4', R_R2: '6' }, 'R_R3'],
  [mixed, 'V_R1', { E_B1: '12', R_R1: '4' }, 'I_B1'],
  [mixed, 'I_R3', { I_B1: '3' }, 'I_R2'],
  [mixed, 'R_R1', { V_R1: '4' }, 'I_B1'],
  [mixed, 'R_total', { R_R2: '6', R_R3: '3' }, 'R_R1'],
  [metered, 'R_R1', { I_A1: '0.5' }, 'E_B1'],
  [metered, 'R_R1', { V_V1: '6' }, 'I_B1'],
  [metered, 'P_R1', { V_V1: '6' }, 'R_R1'],
  [network, 'R_total', { R_R1: '6' }, 'R_R2'],
  [network, 'I_R1', undefined, 'V_R1'],
  ['B1 6 V + R1 12 Ω hidden', 'I_R1', undefined, 'R_R1'],
  ['B1 6 V hidden + R1 12 Ω', 'I_R1', undefined, 'E_B1'],
];

/** Readings that cannot all be right, in the order given. */
const contrary: readonly Row[] = [
  [series, 'R_R1', { V_R1: '2', I_R1: '1', P_R1: '3' }, 'V_R1, I_R1 and P_R1'],
  [series, 'V_R1', { I_R1: '1', I_R2: '2' }, 'I_R1 and I_R2'],
  [series, 'I_R1', { E_B1: '6', V_R1: '4', V_R2: '3' }, 'E_B1, V_R1 and V_R2'],
  [series, 'I_R1', { R_total: '10', R_R1: '4', R_R2: '5' }, 'R_total, R_R1 and R_R2'],
  [series, 'V_R2', { P_total: '12', P_dissipated: '10' }, 'P_total and P_dissipated'],
  [series, 'V_R2', { I_total: '2', I_B1: '3' }, 'I_total and I_B1'],
  [series, 'W_R1', { W_R1: '100', V_R1: '5', Q_R1: '10' }, 'W_R1, V_R1 and Q_R1'],
  [series, 'I_R2', { Q_R1: '10', I_R1: '2', t: '4' }, 'Q_R1, I_R1 and t'],
  // R2 would have −3 V at 1 A.
  [series, 'V_R2', { E_B1: '6', V_R1: '9', I_R1: '1' }, 'E_B1, V_R1 and I_R1'],
  // 6.0 V is at least 5.95 V and at most 6.05 V: across 20 Ω not 0.325 A.
  [series, 'P_R1', { V_R1: '6.0', I_R1: '0.33', R_R1: '20' }, 'V_R1, I_R1 and R_R1'],
  [series, 'P_R1', { I_R1: '0.25', I_R2: '0.27' }, 'I_R1 and I_R2'],
  [parallel, 'I_R1', { V_R1: '5', V_R2: '6' }, 'V_R1 and V_R2'],
  [parallel, 'I_R1', { R_R1: '3', V_R1: '5', V_R2: '6' }, 'V_R1 and V_R2'],
  [parallel, 'R_R1', { I_B1: '5', I_R1: '2', I_R2: '2' }, 'I_B1, I_R1 and I_R2'],
  [parallel, 'I_B1', { R_total: '12', R_R1: '6', R_R2: '12' }, 'R_total, R_R1 and R_R2'],
  // Less current than one branch takes: the other would be below 0 Ω.
  [parallel, 'V_R2', { I_B1: '1', I_R1: '2', V_R1: '6' }, 'I_B1, I_R1 and V_R1'],
  [real, 'I_R1', { E_B1: '6', V_B1: '5', I_B1: '2', r_B1: '1' }, 'E_B1, V_B1, I_B1 and r_B1'],
  [metered, 'I_R1', { V_V1: '5', V_R1: '6' }, 'V_V1 and V_R1'],
  [metered, 'V_R1', { I_A1: '0.30', I_R1: '0.32' }, 'I_A1 and I_R1'],
  [mixed, 'V_R1', { E_B1: '12', V_R1: '5', V_R3: '8' }, 'E_B1, V_R1 and V_R3'],
];

const toSixteen = lessons['14–16'];

/** Everything that has to be said where nothing is found. */
export const lacks: readonly Lack[] = [
  ...oneMissing.map(([line, find, given, name]) => ({
    line,
    find,
    ...(given && { given }),
    said: `To find ${find}, ${name} is missing.`,
  })),
  ...contrary.map(([line, find, given, names]) => ({
    line,
    find,
    ...(given && { given }),
    said: `${names} cannot all be right: they disagree.`,
  })),
  { line: series, find: 'P_R2', given: {}, said: 'Too little is known to find P_R2.' },
  { line: parallel, find: 'R_total', given: { I_R1: '2' }, said: 'Too little is known to find R_total.' },
  { line: mixed, find: 'I_R2', given: { R_R2: '6' }, said: 'To find I_R2, V_R2 is missing.' },
  {
    line: 'B1 6 V r 1 Ω + R1 2 Ω',
    find: 'I_R1',
    course: toSixteen,
    said: 'To find I_R1, this rule is needed. The internal resistance is in series with the rest of the circuit.',
  },
  {
    line: network,
    find: 'R_total',
    course: { ...toSixteen, without: ['resistances in parallel', 'trial p.d.'] },
    said: 'To find R_total, this rule is needed. R1 and R2 are in parallel: the reciprocals of the resistances add up.',
  },
  {
    line: series,
    find: 'P_R1',
    given: { V_R1: '6', I_R1: '3' },
    course: lessons['11–14'],
    said: 'To find P_R1, this rule is needed. For R1: power is p.d. times current.',
  },
];
