import type { Catalogue } from '../../../src/engine/index.ts';
import type { ClaimData } from '../../../src/engine/claims/codes.ts';

/** What the sentences of mistaken claims are tried with. */
export const claimSamples: Pick<
  { readonly [Code in keyof Catalogue]: readonly Catalogue[Code][] },
  keyof ClaimData
> = {
  'claim expects': [
    { expected: 'value', found: '' },
    { expected: 'comparison', found: '' },
    { expected: 'end', found: '<' },
    { expected: 'bracket', found: '=' },
  ],
  'not in this circuit': [
    { found: 'I_R9', suggestion: 'I_R1' },
    { found: 'x', suggestion: '' },
  ],
  'units differ': [
    { left: 'V', right: 'A' },
    { left: 'Ω', right: '' },
  ],
  'claim too large': [{ limit: 24 }],
  'claim has no value': [{}],
};
