/**
 * Worked examples as a teacher would write them: the id of the example in `tests/reference/worked-examples.json`, which names the
 * licence and the section, its source, and the circuit as a line. Values and joins were set down by hand from the description.
 */
export const lines: readonly (readonly [id: string, line: string])[] = [
  // College Physics 2e (OpenStax), chapter 21: examples and problems.
  ['cp-21-ex1', 'B1 12.0 V + R1 1.00 Ω + R2 6.00 Ω + R3 13.0 Ω'],
  ['cp-21-ex2', 'B1 12.0 V + (R1 1.00 Ω ∥ R2 6.00 Ω ∥ R3 13.0 Ω)'],
  ['cp-21-ex3', 'B1 12.0 V + R1 1.00 Ω + (R2 6.00 Ω ∥ R3 13.0 Ω)'],
  ['cp-21-ex4a', 'B1 12.0 V r 0.100 Ω + R1 10.0 Ω'],
  ['cp-21-ex4b', 'B1 12.0 V r 0.100 Ω + R1 0.500 Ω'],
  [
    'cp-21-ten-series',
    'B1 1 V + R1 275 Ω + R2 275 Ω + R3 275 Ω + R4 275 Ω + R5 275 Ω + R6 275 Ω + R7 275 Ω + R8 275 Ω + R9 275 Ω + R10 275 Ω',
  ],
  [
    'cp-21-ten-par',
    'B1 1 V + (R1 275 Ω ∥ R2 275 Ω ∥ R3 275 Ω ∥ R4 275 Ω ∥ R5 275 Ω ∥ R6 275 Ω ∥ R7 275 Ω ∥ R8 275 Ω ∥ R9 275 Ω ∥ R10 275 Ω)',
  ],
  ['cp-21-smallest', 'B1 1 V + (R1 36.0 Ω ∥ R2 50.0 Ω ∥ R3 700 Ω)'],
  [
    'cp-21-ap-24ma',
    'B1 24 V + (R1 1.6 kΩ ∥ R2 1.6 kΩ ∥ R3 1.6 kΩ ∥ R4 1.6 kΩ) + (R5 2.4 kΩ ∥ R6 2.4 kΩ ∥ R7 2.4 kΩ ∥ R8 2.4 kΩ)',
  ],
  ['cp-21-lamp-starter', 'B1 12.0 V + R1 4.8 Ω + R2 0.06 Ω'],
  ['cp-21-torch', 'B1 1.58 V r 0.100 Ω + R1 2.30 Ω'],
  ['cp-21-watch', 'B1 3.0000 V r 2.00 Ω + R1 9998 Ω'],
  ['cp-21-starter-corroded', 'B1 12.0 V r 0.0100 Ω + R2 0.0900 Ω + R1 0.0500 Ω'],
  ['cp-21-charging', 'B1 15.0 V + B2 12.0 V r 0.375 Ω reversed'],
  ['cp-21-multiplier-10v', 'B1 10 V + R1 199.975 kΩ + resistor G1 25 Ω'],
  ['cp-21-multiplier-01v', 'B1 100 mV + R1 1975 Ω + resistor G1 25.0 Ω'],
  ['cp-21-multiplier-03v', 'B1 300 mV + R1 2.99 kΩ + resistor G1 10.0 Ω'],
  ['cp-21-shunt-1a', 'B1 1.25 mV + (R1 1.25 mΩ ∥ resistor G1 25 Ω)'],
  ['cp-21-sensitivity', 'B1 30.0 V + V1 1 MΩ'],
  ['cp-21-ammeter-3a', 'B1 150 µV + resistor G1 10.0 Ω'],

  // University Physics Volume 2 (OpenStax), chapters 9 and 10.
  ['up-9-ex8a', 'B1 9.00 V + R1 3 kΩ'],
  ['up-9-ex8b', 'B1 9.00 V + R1 2.94 kΩ'],
  ['up-10-ex2', 'B1 9 V + R1 20 Ω + R2 20 Ω + R3 20 Ω + R4 20 Ω + R5 10 Ω'],
  ['up-10-p-18v', 'B1 18.00 V + R3 4 Ω reversed + R2 1 Ω reversed + R1 4 Ω reversed'],
  ['up-10-ex3', 'B1 3.00 V + (R1 1.00 Ω ∥ R2 2.00 Ω ∥ R3 2.00 Ω)'],
  ['up-10-ex4', 'B1 12 V + R1 1.00 Ω + (R2 6.00 Ω ∥ R3 13.00 Ω)'],
  ['up-10-ex5', 'B1 50 V + R1 10.00 Ω + R2 10.00 Ω + (R3 10.00 Ω ∥ R4 10.00 Ω)'],
  ['up-10-p15-12-12', 'B1 12 V + B2 12 V + R4 4 Ω + (R2 9 Ω ∥ R3 18 Ω) + R1 14 Ω'],
  [
    'up-10-p17-closed',
    'B1 12.00 V + R5 4.00 Ω + ((R4 8.00 Ω + @m + R1 8.00 Ω) ∥ (R3 8.00 Ω + @n + R2 8.00 Ω)); S1 closed @m–@n',
  ],
  ['up-10-nicad', 'B1 1.25 V r 0.0400 Ω + R1 3.20 Ω'],
  [
    'up-10-toy',
    'B1 1.58 V r 0.0200 Ω + B2 1.58 V r 0.0200 Ω + B3 1.58 V r 0.0200 Ω + B4 1.53 V r 0.100 Ω + R1 10.0 Ω',
  ],
  ['up-10-ap3', 'B1 30.00 V r 1.00 Ω + (R1 9.00 Ω ∥ R2 18.00 Ω) + (R3 10.00 Ω ∥ R4 10.00 Ω) + R5 8.00 Ω'],
  [
    'up-10-cp2',
    '((B1 1.50 V r 1.00 Ω + B2 1.50 V r 1.00 Ω) ∥ (B3 1.50 V r 1.00 Ω + B4 1.50 V r 1.00 Ω)) + R1 10.00 Ω',
  ],
  ['up-10-ex7', 'B2 24 V + R3 20.0 Ω + R1 10.0 Ω + B1 12 V reversed + R2 30.0 Ω'],

  // Physics (OpenStax, high school), chapter 19.
  ['hs-19-unknown', 'B1 15 V + R1 10 Ω + R2 25 Ω + R3 100 Ω + R4 15 Ω'],
  ['hs-19-four-par-24v', 'B1 24 V + (R1 50 Ω ∥ R2 80 Ω ∥ R3 20 Ω ∥ R4 100 Ω)'],
  ['hs-19-strange', 'B1 12 V + (((R1 10 Ω ∥ R2 10 Ω) + R4 10 Ω) ∥ (R3 10 Ω + R5 10 Ω))'],
  ['hs-19-seven', 'B1 16 V + R1 10 Ω + (((R2 10 Ω ∥ R3 10 Ω ∥ R4 10 Ω) + (R5 10 Ω ∥ R6 10 Ω)) ∥ R7 10 Ω)'],
  ['hs-19-branch-power', 'B1 12 V + (((R1 30 Ω ∥ R2 30 Ω) + R4 30 Ω) ∥ (R3 30 Ω + R5 30 Ω) ∥ R6 30 Ω)'],
  ['hs-19-boots', 'B1 9 V + B2 9 V + R1 32.4 Ω'],
  [
    'hs-19-bridged',
    'B1 5 V + (R1 100 Ω ∥ (R2 50 Ω + @m + R3 50 Ω) ∥ R4 100 Ω ∥ (R5 50 Ω + @n + R6 50 Ω)); S1 closed @m–@n',
  ],

  // Everything Science Grade 10, and Physical Sciences Grade 11 (Siyavula).
  ['s10-series-3', 'B1 1 V + R1 0.5 Ω + R2 7.5 Ω + R3 11 Ω'],
  ['s10-series-k-M', 'B1 1 V + R1 750 kΩ + R2 1.7 MΩ'],
  ['s10-par-2', 'B1 1 V + (R1 15 Ω ∥ R2 7 Ω)'],
  ['s11-find-r2', 'B1 1.5 V + R1 1 Ω + R2 5 Ω'],
  ['s11-ohm-par', 'B1 12 V + (R1 2 Ω ∥ R2 4 Ω)'],
  ['s11-par-3', 'B1 1 V + (R1 10 Ω ∥ R2 2 Ω ∥ R3 1 Ω)'],
  ['s11-errata-seven', 'B1 5 V + (R1 10 Ω ∥ R2 10 Ω ∥ R3 10 Ω) + R4 10 Ω + (R5 10 Ω ∥ R6 10 Ω ∥ R7 10 Ω)'],
  ['s11-internal', 'B1 12 V r 0.5 Ω + R1 2.5 Ω'],

  // Lessons In Electric Circuits, volumes I and III (T. R. Kuphaldt).
  ['le-parallel-9v', 'B1 9 V + (R1 10 kΩ ∥ R2 2 kΩ ∥ R3 1 kΩ)'],
  ['le-current-divider', 'B1 6 V + (R1 1 kΩ ∥ R2 3 kΩ ∥ R3 2 kΩ)'],
  ['le-sp-24v', 'B1 24 V + (R1 100 Ω ∥ R2 250 Ω) + (R3 350 Ω ∥ R4 200 Ω)'],
  ['le-lamp-36v', 'B1 36 V + R1 3 Ω'],
  ['le-resistor-rating', 'B1 10 V + R1 5 Ω'],
  ['le-short-circuit', 'B1 10 V r 0.2 Ω + A1'],
  ['le-divider-180', 'B1 180 V + R1 5 kΩ + R2 10 kΩ + R3 7.5 kΩ'],
  ['le-divider-loaded', 'B1 24 V + R1 250 MΩ + (R2 250 MΩ ∥ V1 10 MΩ)'],
  ['le-multiplier-10v', 'B1 10 V + R1 9.5 kΩ + resistor G1 500 Ω'],
  ['le-multiplier-1000v', 'B1 1000 V + R1 900 kΩ + R2 90 kΩ + R3 9 kΩ + R4 500 Ω + resistor G1 500 Ω'],
  ['le-ammeter-impact-1', 'B1 2 V + ((R1 3 Ω + A1 0.5 Ω) ∥ R2 1.5 Ω)'],
  ['le-ammeter-impact-2', 'B1 2 V + (R1 3 Ω ∥ (R2 1.5 Ω + A1 0.5 Ω))'],
  ['le-two-sources', '(B1 28 V + R1 4 Ω) ∥ (B2 7 V + R3 1 Ω) ∥ R2 2 Ω reversed'],
  ['le-superposition-7', 'B2 7 V + R3 1 Ω + (R1 4 Ω ∥ R2 2 Ω)'],
  ['le-max-power-0.8', 'B1 11.2 V r 0.8 Ω + R1 0.8 Ω'],
  ['le-max-power-0.5', 'B1 11.2 V r 0.8 Ω + R1 0.5 Ω'],
  ['le-led-24v', 'B1 24 V + R1 1.12 kΩ + cell D1 1.6 V reversed'],
];
