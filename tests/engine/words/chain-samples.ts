import type { Catalogue } from '../../../src/engine/index.ts';

/** What the links of a chain of reasons are tried with. */
export const chainSamples: Pick<
  { readonly [Code in keyof Catalogue]: readonly Catalogue[Code][] },
  | 'this resistance rises'
  | 'the contact slides'
  | 'so their resistance'
  | 'so the whole'
  | 'so the current'
  | 'so the p.d.'
  | 'counted the other way'
  | 'elsewhere along the track'
> = {
  'this resistance rises': [{ id: 'R2' }],
  'the contact slides': [{ rises: 'R1a', falls: 'R1b' }],
  'so their resistance': [
    { ids: ['R1', 'R2'], change: 'rises', but: false, against: [] },
    { ids: ['R1a', 'R1b'], change: 'stays the same', but: true, against: ['R1a', 'R1b'] },
  ],
  'so the whole': [
    { ids: ['R1', 'R2'], change: 'rises', but: false, against: [], name: 'R_total' },
    { ids: ['R1', 'R2'], change: 'stays the same', but: true, against: ['R1a'], name: 'R_loop' },
  ],
  'so the current': [
    { ids: ['B1'], change: 'falls', but: false, against: [] },
    { ids: ['R2', 'R3'], change: 'rises', but: false, against: ['R1a'] },
  ],
  'so the p.d.': [
    { ids: ['R1'], change: 'stays the same', but: false, against: [], pd: 'p.d.' },
    { ids: ['R2', 'R3'], change: 'stays the same', but: true, against: [], pd: 'voltage' },
    { ids: ['R2'], change: 'falls', but: false, against: ['R1b'], pd: 'p.d.' },
  ],
  'counted the other way': [
    { name: 'V_R2', size: 'falls' },
    { name: 'I_R1', size: 'rises' },
  ],
  'elsewhere along the track': [{ changes: ['falls'] }, { changes: ['rises', 'falls'] }],
};
