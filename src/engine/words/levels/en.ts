import type { Sentences } from '../language.ts';
import type { LevelData } from './codes.ts';

const levelHeads = { before: 'Before', after: 'After', change: 'Change' };

/** What a level diagram says of itself. */
export const levels: Sentences<LevelData> = {
  levels: () => 'Levels of potential round the circuit',
  potential: ({ unit }) => `Potential in ${unit}`,
  'no levels': () => 'There is no supply in this circuit, so there are no potentials to draw.',
  'level head': ({ of }) => levelHeads[of],
  'level step': ({ id, step, by, from, to }) =>
    step === 'none' ? `${id}: no drop, at ${from}` : `${id}: a ${step} of ${by}, from ${from} to ${to}`,
};
