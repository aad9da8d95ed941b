import type { BecauseData } from '../../whatif/index.ts';
import type { Sentences } from '../../words/index.ts';
import { all } from '../../words/index.ts';

const moves = (rises: boolean): string => (rises ? 'rises' : 'falls');

/** The links of a chain of reasons. */
export const whatif: Sentences<BecauseData> = {
  'this resistance rises': ({ id }) => `The resistance of ${id} rises.`,
  'so their resistance rises': ({ ids }) => `So the resistance of ${all(ids)} together rises.`,
  'so the current': ({ ids, rises }) => `So the current through ${all(ids)} ${moves(rises)}.`,
  'so the p.d.': ({ ids, rises }) =>
    `So the p.d. across ${all(ids)}${ids.length > 1 ? ' together' : ''} ${moves(rises)}.`,
};
