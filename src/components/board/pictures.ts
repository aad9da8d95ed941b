import { later } from '../page/index.ts';

type Pictures = typeof import('../picture/index.ts');

/** What makes pictures of a board, once it has come; undefined where it does not. */
export const fetchPictures = (): Promise<Pictures | undefined> => later(import('../picture/index.ts'));
