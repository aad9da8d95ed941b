import { say } from '../reasons/index.ts';
import type { Course } from '../words/index.ts';
import { formulaTokens, type FormulaToken } from './formula-token.ts';

const isSign = (token: FormulaToken | undefined, sign: string): boolean =>
  token?.kind === 'sign' && token.sign === sign;

/** All but the brackets round one number: nothing else could be meant without them. A minus inside matters to a square. */
function told(tokens: readonly FormulaToken[]): readonly FormulaToken[] {
  const open: number[] = [];
  const needless = new Set<number>();
  tokens.forEach((token, at) => {
    if (isSign(token, '(')) open.push(at);
    const from = isSign(token, ')') ? open.pop() : undefined;
    if (from !== undefined && at - from <= (isSign(tokens[at + 1], '²') ? 2 : 3)) needless.add(from).add(at);
  });
  return tokens.filter((_, at) => !needless.has(at));
}

const said = (token: FormulaToken, wording: Course['wording']): string => {
  if (token.kind === 'sign') return say({ code: 'sign', data: token });
  if (token.kind === 'number') return token.unit ? `${token.number} ${token.unit}` : token.number;
  const letter = token.letter.replace(/^U/, 'V');
  return say({ code: 'quantity', data: { letter, of: token.subscript, wording } });
};

/** An equation of a derivation, written as plain text, to be read out. */
export const heard = (text: string, { wording }: Pick<Course, 'wording'>): string =>
  told(formulaTokens(text))
    .map((token) => said(token, wording))
    .join(' ');
