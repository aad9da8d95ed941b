import { html, mathml, nothing, type TemplateResult } from 'lit';
import { formulaOf, type Formula } from '../../engine/explain/index.ts';

function set(part: Formula): TemplateResult<3> {
  switch (part.kind) {
    case 'quantity': {
      const letter = mathml`<mi mathvariant="normal">${part.letter}</mi>`;
      const subscript = part.subscript.replace(/^\((.*)\)$/, '$1');
      return subscript ? mathml`<msub>${letter}<mtext>${subscript}</mtext></msub>` : letter;
    }
    case 'number':
      return mathml`<mrow><mn>${part.number}</mn>${
        part.unit ? mathml`<mspace width="0.17em"/><mtext>${part.unit}</mtext>` : nothing
      }</mrow>`;
    case 'sign':
      return mathml`<mo>${part.sign}</mo>`;
    case 'row':
      return mathml`<mrow>${part.parts.map(set)}</mrow>`;
    case 'fraction':
      return mathml`<mfrac>${set(part.above)}${set(part.below)}</mfrac>`;
    case 'square':
      return mathml`<msup>${set(part.of)}<mn>2</mn></msup>`;
    case 'root':
      return mathml`<msqrt>${set(part.of)}</msqrt>`;
    case 'brackets':
      return mathml`<mrow><mo>(</mo>${set(part.of)}<mo>)</mo></mrow>`;
  }
}

/**
 * An equation written as plain text as MathML Core, for the eye; it is read out by a sentence beside it. Each term is a formula of
 * its own with the signs before it, so that a long equation can break there.
 */
export function formula(text: string): readonly (TemplateResult | string)[] {
  let signs: string[] = [];
  const made: TemplateResult[] = [];
  const add = (of: TemplateResult<3> | typeof nothing): void => {
    const before = signs.map((sign) => mathml`<mo form="infix" lspace="0">${sign}</mo>`);
    made.push(html`<math>${before}${of}</math>`);
    signs = [];
  };
  for (const part of formulaOf(text))
    if (part.kind === 'sign') signs.push(part.sign);
    else add(set(part));
  if (signs.length > 0) add(nothing);
  return made.flatMap((each, place) => (place > 0 ? [' ', each] : [each]));
}
