/** What the rules say of worked examples (`tests/reference/worked-examples.json` names the sources), as the books find it. */
export const linesOfBooks: readonly { readonly id: string; readonly lines: readonly string[] }[] = [
  {
    id: 'cp-21-ex1',
    lines: [
      'series current: I_B1 = I_R1 = I_R2 = I_R3: 0.600 A = 0.600 A = 0.600 A = 0.600 A',
      'series p.d.: V_B1 = V_R1 + V_R2 + V_R3: 12.0 V = 0.6 V + 3.6 V + 7.8 V',
      'series resistance: R_total = R_R1 + R_R2 + R_R3: 20.0 Ω = 1.0 Ω + 6.0 Ω + 13.0 Ω',
      'power balance: P_B1 = P_R1 + P_R2 + P_R3: 7.20 W = 0.36 W + 2.16 W + 4.68 W',
      'junction law does not apply: There is only one path.',
    ],
  },
  {
    id: 'cp-21-ex2',
    lines: [
      'parallel p.d.: V_B1 = V_R1 = V_R2 = V_R3: 12.0 V = 12.0 V = 12.0 V = 12.0 V',
      'parallel current: I_B1 = I_R1 + I_R2 + I_R3: 14.92 A = 12.00 A + 2.00 A + 0.92 A',
      'parallel resistance: R_total < R_R1: 0.804 Ω < 1.000 Ω',
      'power balance: P_B1 = P_R1 + P_R2 + P_R3: 179.1 W = 144.0 W + 24.0 W + 11.1 W',
      'series current does not apply: B1 and R1 are not in series: the current splits between them.',
    ],
  },
  {
    id: 'cp-21-ex3',
    lines: [
      'series p.d.: V_B1 = V_R1 + V_R2: 12.00 V = 2.35 V + 9.65 V',
      'series resistance: R_total = R_R1 + R_R2∥R3: 5.11 Ω = 1.00 Ω + 4.11 Ω',
      'parallel current: I_B1 = I_R2 + I_R3: 2.35 A = 1.61 A + 0.74 A',
      'V = IR: V_R1 = I_R1 × R_R1: 2.35 V = 2.35 A × 1.00 Ω',
    ],
  },
  {
    id: 'up-10-ex3',
    lines: [
      'parallel current: I_B1 = I_R1 + I_R2 + I_R3: 6.00 A = 3.00 A + 1.50 A + 1.50 A',
      'parallel resistance: 1/(R_total) = 1/(R_R1) + 1/(R_R2) + 1/(R_R3): 1/(0.500 Ω) = 1/(1.00 Ω) + 1/(2.00 Ω) + 1/(2.00 Ω)',
      'power balance: P_B1 = P_R1 + P_R2 + P_R3: 18.0 W = 9.0 W + 4.5 W + 4.5 W',
    ],
  },
  {
    id: 'up-10-ex5',
    lines: [
      'series resistance: R_total = R_R1 + R_R2 + R_R3∥R4: 25.0 Ω = 10.0 Ω + 10.0 Ω + 5.0 Ω',
      'parallel current: I_B1 = I_R3 + I_R4: 2.00 A = 1.00 A + 1.00 A',
      'power balance: P_B1 = P_R1 + P_R2 + P_R3 + P_R4: 100 W = 40 W + 40 W + 10 W + 10 W',
    ],
  },
  {
    id: 's11-ohm-par',
    lines: [
      'parallel current: I_B1 = I_R1 + I_R2: 9.00 A = 6.00 A + 3.00 A',
      'parallel resistance: R_total < R_R1: 1.33 Ω < 2.00 Ω',
    ],
  },
  {
    id: 'hs-19-four-par-24v',
    lines: ['junction law: I_R1 + I_R2 + I_R3 + I_R4 = I_B1: 0.48 A + 0.30 A + 1.20 A + 0.24 A = 2.22 A'],
  },
  {
    id: 's10-par-2',
    lines: ['parallel resistance: 1/(R_total) = 1/(R_R1) + 1/(R_R2): 1/(4.77 Ω) = 1/(15.0 Ω) + 1/(7.00 Ω)'],
  },
  {
    id: 'le-sp-24v',
    lines: [
      'series p.d.: V_B1 = V_R1 + V_R3: 24.00 V = 8.63 V + 15.37 V',
      'junction law: I_R1 + I_R2 = I_R3 + I_R4: 0.0863 A + 0.0345 A = 0.0439 A + 0.0769 A',
    ],
  },
  {
    id: 'hs-19-strange',
    lines: [
      'parallel current: I_B1 = I_R4 + I_R3: 1.40 A = 0.80 A + 0.60 A',
      'parallel resistance: R_total < R_(R1∥R2)+R4: 8.57 Ω < 15.00 Ω',
      'series current does not apply: R4 and R1 are not in series: the current splits between them.',
    ],
  },
  {
    id: 'hs-19-branch-power',
    lines: [
      'parallel current: I_B1 = I_R4 + I_R3 + I_R6: 0.867 A = 0.267 A + 0.200 A + 0.400 A',
      'parallel p.d.: V_B1 = V_R1 + V_R4 = V_R3 + V_R5 = V_R6: 12.0 V = 4.0 V + 8.0 V = 6.0 V + 6.0 V = 12.0 V',
    ],
  },
  {
    id: 'cp-21-ap-24ma',
    lines: [
      'series resistance: R_total = R_R1∥R2∥R3∥R4 + R_R5∥R6∥R7∥R8: 1.00 kΩ = 0.40 kΩ + 0.60 kΩ',
      'parallel current: I_B1 = I_R1 + I_R2 + I_R3 + I_R4: 0.0240 A = 0.0060 A + 0.0060 A + 0.0060 A + 0.0060 A',
    ],
  },
  {
    id: 'up-10-ap3',
    lines: [
      'series p.d.: V_B1 = V_R1 + V_R3 + V_R5: 28.5 V = 9.0 V + 7.5 V + 12.0 V',
      'junction law: I_R1 + I_R2 = I_R3 + I_R4: 1.00 A + 0.50 A = 0.75 A + 0.75 A',
    ],
  },
  {
    id: 'cp-21-starter-corroded',
    lines: [
      'series p.d.: V_B1 = V_R2 + V_R1: 11.2 V = 7.2 V + 4.0 V',
      'power balance: P_B1 = P_R2 + P_R1: 896 W = 576 W + 320 W',
    ],
  },
  {
    id: 'up-10-p15-12-12',
    lines: [
      'series p.d.: V_B1 + V_B2 = V_R4 + V_R2 + V_R1: 12.0 V + 12.0 V = 4.0 V + 6.0 V + 14.0 V',
      'parallel current: I_B1 = I_R2 + I_R3: 1.000 A = 0.667 A + 0.333 A',
    ],
  },
  {
    id: 'up-10-ex7',
    lines: [
      'loop law: V_B2 = V_R3 + V_R1 + V_R2 + V_B1: 24.0 V = 4.0 V + 2.0 V + 6.0 V + 12.0 V',
      'power balance: P_B2 = P_R3 + P_R1 + P_R2 + P_B1: 4.80 W = 0.80 W + 0.40 W + 1.20 W + 2.40 W',
      'series resistance does not apply: With B1 inside, the resistances alone do not decide.',
    ],
  },
  {
    id: 'le-two-sources',
    lines: [
      'junction law: I_R2 + I_B2 = I_B1: 4.00 A + 1.00 A = 5.00 A',
      'loop law: V_B1 = V_R1 + V_R3 + V_B2: 28.0 V = 20.0 V + 1.0 V + 7.0 V',
      'parallel p.d.: V_R2 = V_R3 + V_B2: 8.00 V = 1.00 V + 7.00 V',
    ],
  },
  {
    id: 'up-10-p6',
    lines: [
      'junction law: I_B1 + I_B2 = I_R1 + I_R4: 2.00 A + 2.00 A = 1.50 A + 2.50 A',
      'parallel p.d.: V_R1 = V_B2 + V_R3: 6.00 V = 5.00 V + 1.00 V',
    ],
  },
  {
    id: 'le-bridge-24v',
    lines: [
      'junction law: I_R1 + I_R3 = I_R4: 0.0423 A + 0.0166 A = 0.0589 A',
      'series current does not apply: R1, R2, R3, R4 and R5 form a bridge, which is neither series nor parallel.',
      'parallel resistance does not apply: R1, R2, R3, R4 and R5 form a bridge, which is neither series nor parallel.',
    ],
  },
  {
    id: 'cp-21-wheatstone-1',
    lines: [
      'junction law: I_R1 = I_R2 + I_A1: 3.69 mA = 3.69 mA + 0.00 mA',
      'loop law: V_B1 = V_R3 + V_R2: 6.00 V = 3.69 V + 2.31 V',
    ],
  },
  {
    id: 'le-divider-loaded',
    lines: [
      'series p.d.: V_B1 = V_R1 + V_R2: 24.00 V = 23.11 V + 0.89 V',
      'parallel p.d.: V_R2 = V_V1: 0.889 V = 0.889 V',
    ],
  },
];
