import type { Sentences } from '../language.ts';
import type { WrittenData } from './codes.ts';

/** What is said of quantities that are written beside components. */
export const written: Sentences<WrittenData> = {
  'not to be written': ({ found, like, half }) =>
    half
      ? `“${found}” is not written: no current or p.d. stands beside ${half === 'changeover' ? 'one contact of a changeover switch' : 'one part of a potentiometer'}.`
      : `“${found}” is no current or p.d. of a component here: write I_${like} or V_${like}, with = after it for its value, or =? for a blank.`,
  written: ({ quantities }) =>
    `Written beside the components: ${quantities
      .map(
        ({ called, shows, reading }) =>
          `the ${called}${shows === 'reading' ? `, ${reading}` : shows === 'blank' ? ', with a blank for its value' : ''}`,
      )
      .join('; ')}.`,
};
