import { ruleLine, type LineStyle, type RuleCheck, type Token } from '../../../src/engine/rules/index.ts';

/** An equation in plain text: `V_B1 = V_R1 + V_R2`, `6.00 V = 2.00 V + 4.00 V`, `1/R_total = …`. */
export function plain(tokens: readonly Token[]): string {
  return tokens
    .map((token) => {
      if (token.kind === 'operator') return token.sign;
      const text =
        token.kind === 'symbol'
          ? `${token.letter}_${token.subscript}`
          : token.kind === 'number'
            ? token.text.replace('\u202f', ' ')
            : '?';
      return token.over ? `1/(${text})` : text;
    })
    .join(' ');
}

/** A check as one line of prose: symbols and numbers where it holds, else the rule and why not. */
export function prose(check: RuleCheck, style?: LineStyle): string {
  const { symbols, numbers, rounded, why } = ruleLine(check, style);
  if (check.status !== 'holds') return `${check.rule} does not apply: ${why}`;
  return `${check.rule}: ${plain(symbols)}: ${plain(numbers)}${rounded ? ', rounded' : ''}`;
}
