import { circuit } from './en/circuit.ts';
import { describe } from './en/describe.ts';
import { elements } from './en/elements.ts';
import { notation } from './en/notation.ts';
import { rules } from './en/rules.ts';
import { solve } from './en/solve.ts';
import type { Language } from './language.ts';

/** English. */
export const en: Language = {
  tag: 'en',
  sentences: {
    ...circuit,
    ...notation,
    ...solve,
    ...rules,
    ...describe,
    ...elements,
  },
};
