import type { Catalogue } from '../../../src/engine/index.ts';
import type { ReasoningElementData } from '../../../src/engine/reasons/index.ts';

/** What the sentences of elements that reason are tried with. */
export const elementSamples: Pick<
  { readonly [Code in keyof Catalogue]: readonly Catalogue[Code][] },
  keyof ReasoningElementData
> = {
  statement: [{}],
  'claim button': [{ does: 'test' }, { does: 'go' }],
  'write so': [{ text: 'V_R1' }],
  verdict: [
    { verdict: 'always', proved: true, tried: 37, turned: ['R1', 'S1'] },
    { verdict: 'always', proved: true, tried: 1, turned: [] },
    { verdict: 'always', proved: false, tried: 4000, turned: ['R1', 'R2', 'R3'] },
    { verdict: 'never', proved: true, tried: 37, turned: ['R1'] },
    { verdict: 'never', proved: true, tried: 1, turned: [] },
    { verdict: 'never', proved: false, tried: 4000, turned: ['R1', 'R2', 'R3'] },
    { verdict: 'sometimes', proved: true, tried: 37, turned: ['R1'] },
  ],
  'fails at': [
    { settings: [] },
    {
      settings: [
        { id: 'R1', quantity: 'R_R1', text: '2 Ω' },
        { id: 'S1', quantity: '', text: 'open' },
        { id: 'B1', quantity: 'E_B1', text: '12 V' },
        { id: 'B1', quantity: 'r_B1', text: '0.5 Ω' },
      ],
    },
  ],
  'claim now': [
    { left: '3.00 V', right: '6.00 V', holds: false, alike: false },
    { left: '1.50 A', right: '1.50 A', holds: true, alike: false },
    { left: '2.00', right: '2.00', holds: false, alike: true },
  ],
  sign: [{ sign: '≤' }, { sign: '²' }, { sign: '÷' }, { sign: '(' }, { sign: ')' }],
  quantity: [
    { letter: 'I', of: 'R1', wording: 'p.d.' },
    { letter: 'V', of: '(R2∥(R3+R4))', wording: 'voltage' },
    { letter: 'V', of: '((R2∥R3)+R4)', wording: 'voltage' },
    { letter: 'R', of: 'total', wording: 'p.d.' },
    { letter: 'Q', of: 'R1', wording: 'p.d.' },
    { letter: 't', of: '', wording: 'p.d.' },
    { letter: 'Vr', of: 'B1', wording: 'p.d.' },
    { letter: 'Vr', of: 'B1', wording: 'voltage' },
    { letter: 'V', of: 'L1 rated', wording: 'voltage' },
  ],
  'solution heading': [{ part: 'given' }, { part: 'find' }],
  'worked solution': [{}],
  'equation number': [{ number: '(3)' }],
  'steps button': [{ does: 'step' }, { does: 'hint' }, { does: 'answer' }, { does: 'back' }],
  'step count': [{ shown: 2, steps: 8 }],
  'is given': [{}],
  'which quantity': [{ names: ['I_R1', 'R_R1'] }, { names: [] }],
  gap: [
    { of: 'current through R1', unit: 'mA' },
    { of: 'current through R1', unit: '' },
  ],
  'gap mistake': (
    ['not a number', 'unit', 'sign', 'power of ten', 'upside down', 'rounding', 'other'] as const
  ).map((mistake) => ({ mistake })),
  'solution covered': [{}],
  'gap right': [{}],
  'prediction heading': [{ column: 'quantity' }, { column: 'predicted' }, { column: 'shown' }],
  'prediction verdict': [{ right: true }, { right: false }],
  'prediction button': [{ does: 'reveal' }, { does: 'again' }],
  'given not read': [{ found: 'I_R1 0.5' }],
  graph: [
    { names: ['current through A1'], against: 'resistance of R1' },
    { names: ['p.d. across R1', 'p.d. across R2'], against: 'e.m.f. of B1' },
  ],
  'graph point': [
    {
      at: 'resistance of R1 12 ohms',
      values: ['current through A1 1.25 amperes', 'current through A2 0.750 amperes'],
    },
  ],
  'graph values': [{}],
  'one unit': [{ names: ['V_R1', 'I_A1'], units: ['V', 'A'] }],
  'only its own': [{ name: 'I_R1', suggestion: 'I_L1' }],
  'which is turned': [
    { found: '', names: ['R1', 'light'] },
    { found: 'R7', names: ['R1'] },
    { found: '', names: [] },
  ],
};
