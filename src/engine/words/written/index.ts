import { saying, type Say } from '../say.ts';
import type { WrittenData } from './codes.ts';
import { written } from './en.ts';

export type { WrittenData };
export { written };

/** Says what is said of quantities that are written beside components. */
export const sayWritten: Say<WrittenData> = saying({ tag: 'en', sentences: written });
