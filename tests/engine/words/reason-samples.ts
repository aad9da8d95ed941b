import type { ExplainData } from '../../../src/engine/explain/index.ts';

const one = [{ ids: ['R1'] }, { ids: ['R1', 'R2', 'L1'] }];
const reasons = [
  { ids: ['R1', 'R2'], pd: 'p.d.' },
  { ids: ['R1', 'R2', 'L1'], pd: 'voltage' },
];

/** What the sentences of derivations are tried with. */
export const reasonSamples: { readonly [Code in keyof ExplainData]: readonly ExplainData[Code][] } = {
  'same current': reasons,
  'same p.d.': [...reasons, { ids: ['total', 'B1'], pd: 'p.d.' }],
  'resistances in series': reasons,
  'resistances in parallel': reasons,
  'trial p.d.': reasons,
  'p.d.s add': reasons,
  'currents add': reasons,
  'potential divider': [{ ids: ['R1', 'R1+R2'], pd: 'p.d.' }],
  'p.d. is current times resistance': [{ ids: ['R1'], pd: 'p.d.' }],
  power: [{ ids: ['R1'], pd: 'p.d.' }],
  'e.m.f. and internal resistance': [{ ids: ['B1'], pd: 'p.d.' }],
  'power from current': [{ ids: ['B1'], pd: 'p.d.' }],
  'power from p.d.': [{ ids: ['B1'], pd: 'p.d.' }],
  'power of the e.m.f.': [{ ids: ['B1'], pd: 'p.d.' }],
  'power is conserved': [{ ids: ['B1'], pd: 'p.d.' }],
  'internal resistance in series': [{ ids: ['B1'], pd: 'p.d.' }],
  'e.m.f. round the loop': [{ ids: ['B1'], pd: 'p.d.' }],
  'balanced bridge': [{ ids: ['R1', 'R2', 'R3', 'R4', 'A1'], pd: 'p.d.' }],
  rating: [{ ids: ['L1'], pd: 'p.d.' }],
  'no internal resistance': [{ ids: ['B1'], pd: 'p.d.' }],
  'energy and time': [{ ids: ['R1'], pd: 'p.d.' }],
  'charge and time': [{ ids: ['R1'], pd: 'p.d.' }],
  'energy and charge': [{ ids: ['R1'], pd: 'voltage' }],
  'product over sum': [{ ids: ['R1', 'R2+R3'], pd: 'p.d.' }],
  'e.m.f.s in series': [{ ids: ['B1', 'B2'], pd: 'p.d.' }],
  'p.d.s round a loop': [{ ids: ['V1', 'R1', 'R3'], pd: 'p.d.' }],
  'look at': one,
  'hint equation': [{ equation: 'V_R1 = I_R1 × R_R1' }],
  'hint numbers': [{ equation: '6.00 V = I_R1 × 12.0 Ω' }],
  'hint answer': [{ answer: 'I_R1 = 0.500 A' }],
  'one is missing': [{ find: 'I_R1', missing: 'R_R2' }],
  'not enough known': [{ find: 'I_R1' }],
  'readings disagree': [{ names: ['I_A1', 'I_A2', 'I_A3'] }],
  'needs a rule': [{ find: 'R_total', rule: 'In parallel: the reciprocals of the resistances add up.' }],
  'currents at a junction': reasons,
  'e.m.f.s round a loop': reasons,
  'one alone': [{ ids: ['(3)', 'I_R1'], pd: 'p.d.' }],
  'put in': [{ ids: ['(6)', '(5)'], pd: 'p.d.' }],
  'one unknown left': [{ ids: ['(8)', 'I_R5'], pd: 'p.d.' }],
  'put back': [
    { ids: ['(6)', 'I_R5'], pd: 'p.d.' },
    { ids: ['(7)', 'I_R5', 'I_R2'], pd: 'p.d.' },
  ],
  'too large to explain': [{ count: 201, limit: 200 }],
  'too many equations': [{ count: 9, limit: 6 }],
  'equations set up': [
    { find: 'V_R1', unknowns: ['I_R1'] },
    { find: 'I_R5', unknowns: ['I_R1', 'I_R2', 'I_R5'] },
  ],
  'current counted': [
    {
      name: 'I_R5',
      id: 'R5',
      from: [
        { id: 'R1', side: '' },
        { id: 'R3', side: '' },
      ],
      to: [{ id: 'B2', side: '−' }],
    },
    { name: 'I_B1', id: 'B1', from: [], to: [] },
  ],
  'left out': [{ id: 'R5' }],
  'flows the other way': [{ name: 'I_R5' }],
};
