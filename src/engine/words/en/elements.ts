import type { ElementData } from '../element-codes.ts';
import type { Sentences } from '../language.ts';
import { all } from './list.ts';

/** What the elements say of themselves. */
export const elements: Sentences<ElementData> = {
  'no board': ({ wanted, present }) =>
    `There is no board “${wanted}” here${present.length > 0 ? `; there is ${all(present)}` : ''}.`,
};
