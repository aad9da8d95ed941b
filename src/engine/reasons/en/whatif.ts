import type { BecauseData } from '../../whatif/index.ts';
import type { Sentences } from '../../words/index.ts';
import { all } from '../../words/index.ts';

const then = (but: boolean): string => (but ? 'But' : 'So');

/** The links of a chain of reasons. */
export const whatif: Sentences<BecauseData> = {
  'this resistance rises': ({ id }) => `The resistance of ${id} rises.`,
  'so their resistance rises': ({ ids }) => `So the resistance of ${all(ids)} together rises.`,
  'so the current': ({ ids, change, but }) => `${then(but)} the current through ${all(ids)} ${change}.`,
  'so the p.d.': ({ ids, change, but, pd }) =>
    `${then(but)} the ${pd} across ${all(ids)}${ids.length > 1 ? ' together' : ''} ${change}.`,
};
