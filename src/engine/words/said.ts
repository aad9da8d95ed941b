import type { Catalogue } from './catalogue.ts';

/** Something to be said, of these codes: a code and the data its sentence needs. */
export type SaidOf<Codes, Code extends keyof Codes = keyof Codes> = {
  [C in Code]: { readonly code: C; readonly data: Codes[C] };
}[Code];

/** Something to be said: a code and the data its sentence needs. */
export type Said<Code extends keyof Catalogue = keyof Catalogue> = SaidOf<Catalogue, Code>;
