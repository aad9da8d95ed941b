import type { Sentences } from '../language.ts';
import type { ChangeData } from './codes.ts';

/** What is said of a reading and the held one. */
export const comparison: Sentences<ChangeData> = {
  change: ({ direction, by, ratio, turned }) =>
    [
      turned && 'turned round',
      direction === 'same' ? !turned && 'the same' : `${direction} by\u00a0${by}`,
      direction !== 'same' && ratio && `×\u00a0${ratio}`,
    ]
      .filter(Boolean)
      .join(', '),
  'less than': ({ text }) => `less than ${text}`,
};
