import { prepareQuantities } from '../../engine/core.ts';
import { later } from '../page/index.ts';

/** Writes currents and p.d.s into drawings. */
export type Writer = typeof import('../written/index.ts');

let come: Writer | undefined;

/** What writes quantities, once it has come. */
export const writer = (): Writer | undefined => come;

/** Fetches it, where that is not done yet. */
export async function fetchWriter(): Promise<void> {
  come ??= await later(
    Promise.all([import('../written/index.ts'), prepareQuantities()]).then(([written]) => written),
  );
}
