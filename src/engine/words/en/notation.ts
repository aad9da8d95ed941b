import type { MistakeData } from '../../notation/index.ts';
import type { Sentences } from '../language.ts';

/** What is wrong with a line of notation. */
export const notation: Sentences<MistakeData> = {
  'unexpected character': ({ found }) => `“${found}” does not belong in a circuit.`,
};
