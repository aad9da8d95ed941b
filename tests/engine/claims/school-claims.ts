import type { ClaimVerdict } from '../../../src/engine/index.ts';

/** A claim, its verdict, and the settings at which it fails where it holds only sometimes. */
export type Row = readonly [
  text: string,
  verdict: ClaimVerdict['verdict'],
  fails?: Readonly<Record<string, string>>,
];

/** What pupils say of simple circuits, right and wrong: worked out by hand (common practice). */
export const schoolClaims: Readonly<Record<string, readonly Row[]>> = {
  // A quay light at its rating, with a switch.
  'B1 6 V + L1 6 V 3 W + S1 closed': [
    ['I_L1 = 0.5 A', 'sometimes', { S1: 'open' }],
    ['P_L1 = 3 W', 'sometimes', { S1: 'open' }],
    ['P_L1 ≤ 3 W', 'always'],
    ['P_L1 > 3 W', 'never'],
    ['R_L1 = 12 Ω', 'always'],
    ['V_L1 + V_S1 = 6 V', 'always'],
    // An open switch has the whole p.d., a closed one none: both are often said the wrong way round.
    ['V_S1 = 0', 'sometimes', { S1: 'open' }],
    ['V_S1 = 6 V', 'sometimes', { S1: 'closed' }],
    ['V_S1 = 3 V', 'never'],
  ],
  // A switch in one of two branches.
  'B1 6 V + (R1 6 Ω + S1 open) ∥ R2 12 Ω': [
    ['I_R2 = 0.5 A', 'always'],
    ['I_R1 = 1 A', 'sometimes', { S1: 'open' }],
    ['I_R1 = I_R2', 'never'],
    ['I_B1 > 0.4 A', 'always'],
    ['I_B1 = I_R1 + I_R2', 'always'],
    ['R_total ≤ 12 Ω', 'always'],
    ['R_total < 12 Ω', 'sometimes', { S1: 'open' }],
    ['V_R2 = 6 V', 'always'],
    ['V_R1 = 6 V', 'sometimes', { S1: 'open' }],
  ],
  // Two cells with something inside, as one.
  'B1 1.5 V r 0.5 Ω + B2 1.5 V r 0.5 Ω + R1 [1..10 step 1] 2 Ω': [
    ['V_B1 + V_B2 = V_R1', 'always'],
    ['V_B1 = V_B2', 'always'],
    ['V_B1 < 1.5 V', 'always'],
    ['E_B1 + E_B2 = 3 V', 'always'],
    ['I_R1 = 3 V / (R_R1 + 1 Ω)', 'always'],
    ['I_R1 = 3 V / R_R1', 'never'],
    // The load takes most where it is what is inside: 1.5 A · 1.5 V.
    ['P_R1 ≤ 2.25 W', 'always'],
    ['P_R1 < 2.25 W', 'sometimes', { R1: '1' }],
    ['V_R1 > 1.4 V', 'always'],
    ['V_R1 > 1.5 V', 'sometimes', { R1: '1' }],
    ['V_R1 ≥ 3 V', 'never'],
  ],
  // Three branches: 9/3 + 9/6 + 9/R.
  'B1 9 V + (R1 3 Ω ∥ R2 6 Ω ∥ R3 [2..18 step 1] 18 Ω)': [
    ['R_total < 2 Ω', 'always'],
    ['R_total ≥ 1 Ω', 'always'],
    ['R_total > 1 Ω', 'sometimes', { R3: '2' }],
    ['R_total < 1 Ω', 'never'],
    ['I_R1 = 2 I_R2', 'always'],
    ['I_R1 : I_R2 = 2', 'always'],
    ['I_R2 = 2 I_R1', 'never'],
    ['P_B1 = P_R1 + P_R2 + P_R3', 'always'],
    ['I_R3 < I_R1', 'sometimes', { R3: '3' }],
    ['V_R1 + V_R2 + V_R3 = V_B1', 'never'],
    ['V_R1 + V_R2 + V_R3 = 3 V_B1', 'always'],
  ],
  // A divider that nothing is joined to.
  'B1 6 V + R1 [1..20 step 1] 10 kΩ + R2 10 kΩ': [
    ['V_R2 = 6 V R_R2 / (R_R1 + R_R2)', 'always'],
    ['V_R2 = 6 V R_R1 / (R_R1 + R_R2)', 'sometimes', { R1: '9000' }],
    ['V_R2 = 3 V', 'sometimes', { R1: '9000' }],
    ['V_R1 / V_R2 = R_R1 / R_R2', 'always'],
    ['V_R2 ≥ 2 V', 'always'],
    ['V_R2 > 2 V', 'sometimes', { R1: '20000' }],
  ],
};
