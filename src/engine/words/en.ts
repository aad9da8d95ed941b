import { circuit } from './en/circuit.ts';
import { claims } from './en/claims.ts';
import { describe } from './en/describe.ts';
import { elements } from './en/elements.ts';
import { explain } from './en/explain.ts';
import { notation } from './en/notation.ts';
import { rules } from './en/rules.ts';
import { solve } from './en/solve.ts';
import { whatif } from './en/whatif.ts';
import type { Language } from './language.ts';

/** English. */
export const en: Language = {
  tag: 'en',
  sentences: {
    ...circuit,
    ...notation,
    ...solve,
    ...rules,
    ...explain,
    ...describe,
    ...whatif,
    ...claims,
    ...elements,
  },
};
