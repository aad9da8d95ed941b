import { say, type Course } from '../../engine/core.ts';

/** The letter of a quantity's name and what it belongs to: `V_p_q` is V of `p_q`; a word, such as `temperature`, belongs to nothing. */
export function partsOf(name: string): { readonly letter: string; readonly of: string } {
  const [letter = '', ...of] = name.split('_');
  return { letter, of: of.join('_') };
}

/** What a quantity is called in a sentence: "current through A1". */
export function calledQuantity(name: string, { wording }: Course): string {
  const { letter, of } = partsOf(name);
  return say({ code: 'measures', data: { letter: letter === 'U' ? 'V' : letter, of, wording, ohms: '' } });
}

/** Names as the engine reads them, in a text: U is a V there. */
export const asRead = (text: string): string => text.replace(/\bU_/g, 'V_');

/** Names in the letters of a course, in a text: `U_R1` in some. */
export const inLetters = (text: string, { letter }: Course): string => text.replace(/\b[UV]_/g, `${letter}_`);
