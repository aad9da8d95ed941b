/** A problem with its solution as a class reads it: each step its reason, the equation for what it gives, the same in numbers, and the result. */
export interface Problem {
  readonly what: string;
  readonly circuit: string;
  readonly find: string;
  /** With a minute on the clock, to the age of 16, or in the letters of another class. */
  readonly how?: 't' | '14–16' | 'U';
  readonly steps: readonly (readonly [why: string, equation: string, numbers: string, result: string])[];
}

/** Problems of every kind, solved in the order that is common practice. */
export const problems: readonly Problem[] = [
  {
    what: 'the p.d. across one of two in series',
    circuit: 'B1 12 V + R1 4 Ω + R2 8 Ω',
    find: 'V_R2',
    steps: [
      [
        'Without internal resistance, the p.d. across B1 is the e.m.f.',
        'V_B1 = E_B1',
        'V_B1 = 12.0 V',
        '12.0 V',
      ],
      [
        'R1 and R2 are in series: their resistances add up.',
        'R_total = R_R1 + R_R2',
        'R_total = 4.00 Ω + 8.00 Ω',
        '12.0 Ω',
      ],
      [
        'R2 takes the same share of the p.d. across the whole circuit outside the supply as of its resistance.',
        'V_R2 = V_B1 × R_R2 ÷ R_total',
        'V_R2 = 12.0 V × 8.00 Ω ÷ 12.0 Ω',
        '8.00 V',
      ],
    ],
  },
  {
    what: 'the current through two side by side',
    circuit: 'B1 12 V + (R1 4 Ω ∥ R2 12 Ω)',
    find: 'I_total',
    steps: [
      [
        'R1 and R2 are in parallel: the reciprocals of the resistances add up.',
        '1/R_total = 1/R_R1 + 1/R_R2',
        '1/R_total = 1/4.00 Ω + 1/12.0 Ω',
        '3.00 Ω',
      ],
      [
        'For the whole circuit outside the supply: p.d. is current times resistance.',
        'I_B1 = E_B1 ÷ R_total',
        'I_B1 = 12.0 V ÷ 3.00 Ω',
        '4.00 A',
      ],
      [
        'The same current flows through the whole circuit outside the supply and B1.',
        'I_total = I_B1',
        'I_total = 4.00 A',
        '4.00 A',
      ],
    ],
  },
  {
    what: 'the current in a branch, at a battery with something inside',
    circuit: 'B1 12 V r 1 Ω + R1 3 Ω + (R2 4 Ω ∥ R3 12 Ω)',
    find: 'I_R3',
    steps: [
      [
        'R2 and R3 are in parallel: the reciprocals of the resistances add up.',
        '1/R_(R2∥R3) = 1/R_R2 + 1/R_R3',
        '1/R_(R2∥R3) = 1/4.00 Ω + 1/12.0 Ω',
        '3.00 Ω',
      ],
      [
        'R1 and R2∥R3 are in series: their resistances add up.',
        'R_total = R_R1 + R_(R2∥R3)',
        'R_total = 3.00 Ω + 3.00 Ω',
        '6.00 Ω',
      ],
      [
        'The internal resistance is in series with the rest of the circuit.',
        'R_loop = R_total + r_B1',
        'R_loop = 6.00 Ω + 1.00 Ω',
        '7.00 Ω',
      ],
      [
        'Round the whole circuit, the e.m.f. is current times all the resistance.',
        'I_B1 = E_B1 ÷ R_loop',
        'I_B1 = 12.0 V ÷ 7.00 Ω',
        '1.71 A',
      ],
      ['The same current flows through R2∥R3 and B1.', 'I_(R2∥R3) = I_B1', 'I_(R2∥R3) = 1.71 A', '1.71 A'],
      [
        'For R2∥R3: p.d. is current times resistance.',
        'V_(R2∥R3) = I_(R2∥R3) × R_(R2∥R3)',
        'V_(R2∥R3) = 1.71 A × 3.00 Ω',
        '5.14 V',
      ],
      ['The p.d. is the same across R3 and R2∥R3.', 'V_R3 = V_(R2∥R3)', 'V_R3 = 5.14 V', '5.14 V'],
      [
        'For R3: p.d. is current times resistance.',
        'I_R3 = V_R3 ÷ R_R3',
        'I_R3 = 5.14 V ÷ 12.0 Ω',
        '0.429 A',
      ],
    ],
  },
  {
    what: 'the p.d. that a battery has left for the outside',
    circuit: 'B1 12 V r 1 Ω + R1 5 Ω',
    find: 'V_B1',
    steps: [
      [
        'The internal resistance is in series with the rest of the circuit.',
        'R_loop = R_R1 + r_B1',
        'R_loop = 5.00 Ω + 1.00 Ω',
        '6.00 Ω',
      ],
      [
        'Round the whole circuit, the e.m.f. is current times all the resistance.',
        'I_B1 = E_B1 ÷ R_loop',
        'I_B1 = 12.0 V ÷ 6.00 Ω',
        '2.00 A',
      ],
      [
        'For B1: part of the e.m.f. is the p.d. across the internal resistance.',
        'Vr_B1 = I_B1 × r_B1',
        'Vr_B1 = 2.00 A × 1.00 Ω',
        '2.00 V',
      ],
      [
        'For B1: part of the e.m.f. is the p.d. across the internal resistance.',
        'V_B1 = E_B1 − Vr_B1',
        'V_B1 = 12.0 V − 2.00 V',
        '10.0 V',
      ],
    ],
  },
  {
    what: 'the power of a lamp as marked',
    circuit: 'B1 6 V + L1 6 V 3 W',
    find: 'P_L1',
    steps: [
      [
        'Without internal resistance, the p.d. across B1 is the e.m.f.',
        'V_B1 = E_B1',
        'V_B1 = 6.00 V',
        '6.00 V',
      ],
      ['The p.d. is the same across L1 and B1.', 'V_L1 = V_B1', 'V_L1 = 6.00 V', '6.00 V'],
      [
        'What is marked on L1 gives its resistance.',
        'R_L1 = V_L1 rated² ÷ P_L1 rated',
        'R_L1 = (6.00 V)² ÷ 3.00 W',
        '12.0 Ω',
      ],
      [
        'For L1: power is p.d. squared over resistance.',
        'P_L1 = V_L1² ÷ R_L1',
        'P_L1 = (6.00 V)² ÷ 12.0 Ω',
        '3.00 W',
      ],
    ],
  },
  {
    what: 'the power of one of two in series',
    circuit: 'B1 12 V + R1 4 Ω + R2 8 Ω',
    find: 'P_R2',
    steps: [
      [
        'Without internal resistance, the p.d. across B1 is the e.m.f.',
        'V_B1 = E_B1',
        'V_B1 = 12.0 V',
        '12.0 V',
      ],
      [
        'R1 and R2 are in series: their resistances add up.',
        'R_total = R_R1 + R_R2',
        'R_total = 4.00 Ω + 8.00 Ω',
        '12.0 Ω',
      ],
      [
        'R2 takes the same share of the p.d. across the whole circuit outside the supply as of its resistance.',
        'V_R2 = V_B1 × R_R2 ÷ R_total',
        'V_R2 = 12.0 V × 8.00 Ω ÷ 12.0 Ω',
        '8.00 V',
      ],
      [
        'For R2: power is p.d. squared over resistance.',
        'P_R2 = V_R2² ÷ R_R2',
        'P_R2 = (8.00 V)² ÷ 8.00 Ω',
        '8.00 W',
      ],
    ],
  },
  {
    what: 'the reading of a voltmeter',
    circuit: 'B1 6 V + A1 + R1 3 Ω ∥ V1',
    find: 'V_V1',
    steps: [
      [
        'Without internal resistance, the p.d. across B1 is the e.m.f.',
        'V_B1 = E_B1',
        'V_B1 = 6.00 V',
        '6.00 V',
      ],
      ['The p.d. is the same across V1 and B1.', 'V_V1 = V_B1', 'V_V1 = 6.00 V', '6.00 V'],
    ],
  },
  {
    what: 'the power in a branch',
    circuit: 'B1 9 V r 0.5 Ω + (R1 4 Ω ∥ R2 4 Ω) + R3 2 Ω',
    find: 'P_R1',
    steps: [
      [
        'R1 and R2 are in parallel: the reciprocals of the resistances add up.',
        '1/R_(R1∥R2) = 1/R_R1 + 1/R_R2',
        '1/R_(R1∥R2) = 1/4.00 Ω + 1/4.00 Ω',
        '2.00 Ω',
      ],
      [
        'R1∥R2 and R3 are in series: their resistances add up.',
        'R_total = R_(R1∥R2) + R_R3',
        'R_total = 2.00 Ω + 2.00 Ω',
        '4.00 Ω',
      ],
      [
        'The internal resistance is in series with the rest of the circuit.',
        'R_loop = R_total + r_B1',
        'R_loop = 4.00 Ω + 0.500 Ω',
        '4.50 Ω',
      ],
      [
        'Round the whole circuit, the e.m.f. is current times all the resistance.',
        'I_B1 = E_B1 ÷ R_loop',
        'I_B1 = 9.00 V ÷ 4.50 Ω',
        '2.00 A',
      ],
      ['The same current flows through R1∥R2 and B1.', 'I_(R1∥R2) = I_B1', 'I_(R1∥R2) = 2.00 A', '2.00 A'],
      [
        'For R1∥R2: p.d. is current times resistance.',
        'V_(R1∥R2) = I_(R1∥R2) × R_(R1∥R2)',
        'V_(R1∥R2) = 2.00 A × 2.00 Ω',
        '4.00 V',
      ],
      ['The p.d. is the same across R1 and R1∥R2.', 'V_R1 = V_(R1∥R2)', 'V_R1 = 4.00 V', '4.00 V'],
      [
        'For R1: power is p.d. squared over resistance.',
        'P_R1 = V_R1² ÷ R_R1',
        'P_R1 = (4.00 V)² ÷ 4.00 Ω',
        '4.00 W',
      ],
    ],
  },
  {
    what: 'the resistance of two side by side, to the age of 16',
    circuit: 'B1 12 V + (R1 4 Ω ∥ R2 12 Ω)',
    find: 'R_total',
    how: '14–16',
    steps: [
      [
        'Without internal resistance, the p.d. across B1 is the e.m.f.',
        'V_B1 = E_B1',
        'V_B1 = 12.0 V',
        '12.0 V',
      ],
      ['The p.d. is the same across R1 and B1.', 'V_R1 = V_B1', 'V_R1 = 12.0 V', '12.0 V'],
      ['For R1: p.d. is current times resistance.', 'I_R1 = V_R1 ÷ R_R1', 'I_R1 = 12.0 V ÷ 4.00 Ω', '3.00 A'],
      ['The p.d. is the same across R2 and B1.', 'V_R2 = V_B1', 'V_R2 = 12.0 V', '12.0 V'],
      ['For R2: p.d. is current times resistance.', 'I_R2 = V_R2 ÷ R_R2', 'I_R2 = 12.0 V ÷ 12.0 Ω', '1.00 A'],
      [
        'R1 and R2 are side by side: the currents add up.',
        'I_B1 = I_R1 + I_R2',
        'I_B1 = 3.00 A + 1.00 A',
        '4.00 A',
      ],
      [
        'For the whole circuit outside the supply: p.d. is current times resistance.',
        'R_total = E_B1 ÷ I_B1',
        'R_total = 12.0 V ÷ 4.00 A',
        '3.00 Ω',
      ],
    ],
  },
  {
    what: 'the charge that flows in a minute',
    circuit: 'B1 6 V + R1 12 Ω',
    find: 'Q_R1',
    how: 't',
    steps: [
      [
        'For R1: p.d. is current times resistance.',
        'I_B1 = E_B1 ÷ R_R1',
        'I_B1 = 6.00 V ÷ 12.0 Ω',
        '0.500 A',
      ],
      ['The same current flows through R1 and B1.', 'I_R1 = I_B1', 'I_R1 = 0.500 A', '0.500 A'],
      ['For R1: charge is current times time.', 'Q_R1 = I_R1 × t', 'Q_R1 = 0.500 A × 60.0 s', '30.0 C'],
    ],
  },
  {
    what: 'the energy that is taken in a minute',
    circuit: 'B1 6 V + R1 12 Ω',
    find: 'W_R1',
    how: 't',
    steps: [
      [
        'Without internal resistance, the p.d. across B1 is the e.m.f.',
        'V_B1 = E_B1',
        'V_B1 = 6.00 V',
        '6.00 V',
      ],
      ['The p.d. is the same across R1 and B1.', 'V_R1 = V_B1', 'V_R1 = 6.00 V', '6.00 V'],
      [
        'For R1: power is p.d. squared over resistance.',
        'P_R1 = V_R1² ÷ R_R1',
        'P_R1 = (6.00 V)² ÷ 12.0 Ω',
        '3.00 W',
      ],
      ['For R1: energy is power times time.', 'W_R1 = P_R1 × t', 'W_R1 = 3.00 W × 60.0 s', '180 J'],
    ],
  },
  {
    what: 'the p.d. across the other one, in letters and figures of another class',
    circuit: 'B1 12 V + R1 4 Ω + R2 8 Ω',
    find: 'V_R1',
    how: 'U',
    steps: [
      [
        'Without internal resistance, the voltage across B1 is the e.m.f.',
        'U_B1 = E_B1',
        'U_B1 = 12 V',
        '12 V',
      ],
      [
        'R1 and R2 are in series: their resistances add up.',
        'R_total = R_R1 + R_R2',
        'R_total = 4,0 Ω + 8,0 Ω',
        '12 Ω',
      ],
      [
        'R1 takes the same share of the voltage across the whole circuit outside the supply as of its resistance.',
        'U_R1 = U_B1 × R_R1 ÷ R_total',
        'U_R1 = 12 V × 4,0 Ω ÷ 12 Ω',
        '4,0 V',
      ],
    ],
  },
];
