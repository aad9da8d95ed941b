import { say } from '../reasons/index.ts';
import type { Course } from '../words/index.ts';
import { formulaTokens, type FormulaToken } from './formula-token.ts';

const said = (token: FormulaToken, wording: Course['wording']): string => {
  if (token.kind === 'sign') return say({ code: 'sign', data: token });
  if (token.kind === 'number') return token.unit ? `${token.number} ${token.unit}` : token.number;
  const letter = token.letter === 'U' ? 'V' : token.letter;
  return say({ code: 'quantity', data: { letter, of: token.subscript, wording } });
};

/** An equation of a derivation, written as plain text, to be read out. */
export const heard = (text: string, { wording }: Pick<Course, 'wording'>): string =>
  formulaTokens(text)
    .map((token) => said(token, wording))
    .join(' ');
