import { all, any } from '../en/list.ts';
import type { Sentences } from '../language.ts';
import type { BecauseData } from '../../whatif/index.ts';

const changed = { rises: 'fall', falls: 'rise', 'stays the same': 'change' } as const;

const follows = (subject: string, { change, but, against }: BecauseData['so the current']): string => {
  const otherwise =
    against.length > 0 ? `, though ${any(against)} alone would make it ${changed[change]}` : '';
  return `${but ? 'But' : 'So'} the ${subject} ${change}${otherwise}.`;
};

/** The links of a chain of reasons. */
export const because: Sentences<BecauseData> = {
  'this resistance rises': ({ id }) => `The resistance of ${id} rises.`,
  'the contact slides': ({ rises, falls }) =>
    `The contact slides: the resistance of ${rises} rises, and that of ${falls} falls by as much.`,
  'so their resistance': (data) => follows(`resistance of ${all(data.ids)} together`, data),
  'so the whole': ({ name, ...data }) =>
    follows(name === 'R_total' ? 'total resistance' : 'resistance of the whole loop', data),
  'so the current': (data) => follows(`current through ${all(data.ids)}`, data),
  'so the p.d.': ({ pd, ...data }) =>
    follows(`${pd} across ${all(data.ids)}${data.ids.length > 1 ? ' together' : ''}`, data),
  'counted the other way': ({ name, size }) =>
    `${name} is counted the other way, so it is negative: as its size ${size}, it ${size === 'rises' ? 'falls' : 'rises'}.`,
  'elsewhere along the track': ({ changes }) => `But at some other places of the contact it ${any(changes)}.`,
};
