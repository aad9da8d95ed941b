import type { Catalogue } from './catalogue.ts';
import { en } from './en.ts';
import type { Language } from './language.ts';
import type { SaidOf } from './said.ts';

/** Says what stands in a catalogue, or of a thing that has a reason, such as a rule's check, that reason. */
export type Say<Codes> = <Code extends keyof Codes>(
  said: SaidOf<Codes, Code> | { readonly why: SaidOf<Codes, Code> },
  language?: Language<Codes>,
) => string;

/** Says all that a language has, in that language unless another is given. */
export const saying =
  <Codes>(usual: Language<Codes>): Say<Codes> =>
  <Code extends keyof Codes>(
    said: SaidOf<Codes, Code> | { readonly why: SaidOf<Codes, Code> },
    language = usual,
  ) => {
    const { code, data } = 'why' in said ? said.why : said;
    const sentence: (data: Codes[Code]) => string = language.sentences[code];
    return sentence(data);
  };

/** The sentence for a code and its data, in English unless another language is given. */
export const say: Say<Catalogue> = saying(en);
