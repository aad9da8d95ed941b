import { saying, type Say } from '../say.ts';
import type { LevelData } from './codes.ts';
import { levels } from './en.ts';

export type { LevelData };
export { levels };

/** Says what a level diagram says of itself. */
export const sayLevels: Say<LevelData> = saying({ tag: 'en', sentences: levels });
