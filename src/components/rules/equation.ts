import { html, mathml, nothing, type TemplateResult } from 'lit';
import type { Token } from '../../engine/core.ts';

type Operand = Exclude<Token, { kind: 'operator' }>;

function operand(token: Operand): TemplateResult<3> {
  if (token.kind === 'symbol')
    return mathml`<msub><mi mathvariant="normal">${token.letter}</mi><mtext>${token.subscript}</mtext></msub>`;
  if (token.kind === 'unknown') return mathml`<mtext>?</mtext>`;
  return mathml`<mrow><mn>${token.number}</mn><mspace width="0.17em"/><mtext>${token.unit}</mtext></mrow>`;
}

/** What stands behind an operator, or first: a formula of its own, so that a long equation can break before it. */
function piece(token: Operand, sign: string | undefined): TemplateResult {
  const one = operand(token);
  return html`<math
    >${sign ? mathml`<mo form="infix" lspace="0">${sign}</mo>` : nothing}${token.over ? mathml`<mfrac><mn>1</mn>${one}</mfrac>` : one}</math
  > `;
}

/** An equation as MathML Core, for the eye; it is read out by a sentence beside it. */
export function equation(tokens: readonly Token[]): readonly TemplateResult[] {
  let sign: string | undefined;
  return tokens.flatMap((token) => {
    if (token.kind === 'operator') {
      sign = token.sign;
      return [];
    }
    const made = piece(token, sign);
    sign = undefined;
    return [made];
  });
}
