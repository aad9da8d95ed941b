import type { Catalogue } from './catalogue.ts';

/** Something to be said: a code and the data its sentence needs. */
export type Said<Code extends keyof Catalogue = keyof Catalogue> = {
  [C in Code]: { readonly code: C; readonly data: Catalogue[C] };
}[Code];
