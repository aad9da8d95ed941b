import { saying, type Say } from '../say.ts';
import type { ChangeData } from './codes.ts';
import { comparison } from './en.ts';

export type { ChangeData };
export { comparison };

/** Says what is said of a reading and the held one. */
export const sayChange: Say<ChangeData> = saying({ tag: 'en', sentences: comparison });
