import type { Catalogue } from '../../../src/engine/index.ts';

/** What the sentences of a level diagram are tried with. */
export const levelSamples: Pick<
  { readonly [Code in keyof Catalogue]: readonly Catalogue[Code][] },
  'levels' | 'potential' | 'no levels' | 'level head' | 'level step'
> = {
  levels: [{}],
  potential: [{ unit: 'V' }],
  'no levels': [{}],
  'level head': [{ of: 'before' }, { of: 'after' }, { of: 'change' }],
  'level step': [
    { id: 'B1', step: 'lift', by: '6.00 volts', from: '0 volts', to: '6.00 volts' },
    { id: 'R1', step: 'drop', by: '4.00 volts', from: '6.00 volts', to: '2.00 volts' },
    { id: 'A1', step: 'none', by: '', from: '6.00 volts', to: '6.00 volts' },
  ],
};
