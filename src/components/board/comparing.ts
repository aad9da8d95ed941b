import { later } from '../page/index.ts';

/** Compares readings, and draws how wide the held ribbons were. */
export type BoardComparison = typeof import('../comparison/index.ts');

let come: BoardComparison | undefined;

/** What compares with held readings, once it has come. */
export const comparison = (): BoardComparison | undefined => come;

/** Fetches it, where that is not done yet. */
export async function fetchComparison(): Promise<void> {
  come ??= await later(import('../comparison/index.ts'));
}
