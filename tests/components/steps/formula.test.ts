import { expect, fixture, html } from '@open-wc/testing';
import fc from 'fast-check';
import { formula } from '../../../src/components/steps/formula.ts';

const made = (text: string): Promise<HTMLElement> => fixture<HTMLElement>(html`<p>${formula(text)}</p>`);

/** The elements of a formula with what they hold: `frac(mi mn)`. */
function shape(node: Element): string {
  const inner = [...node.children].map(shape).join(' ');
  return node.localName + (inner ? `(${inner})` : '');
}

describe('an equation is set in MathML', () => {
  const rows = [
    ['V_R1', 'math(msub(mi mtext))'],
    ['t', 'math(mi)'],
    ['12.0\u202fV', 'math(mrow(mn mspace mtext))'],
    ['1/R_R1', 'math(mfrac(mrow(mn) msub(mi mtext)))'],
    ['V_R1²', 'math(msup(msub(mi mtext) mn))'],
    ['√(P_R1 ÷ R_R1)', 'math(msqrt(mfrac(msub(mi mtext) msub(mi mtext))))'],
    ['(−2 A)', 'math(mrow(mo mrow(mo mrow(mn mspace mtext)) mo))'],
    ['I_R1 × R_R1', 'math(mrow(msub(mi mtext) mo msub(mi mtext)))'],
  ] as const;
  for (const [text, expected] of rows)
    it(text, async () => {
      const [only] = (await made(text)).children;
      expect(shape(only!)).to.equal(expected);
    });

  it('each term in a formula of its own with the sign before it, so that a line can break there', async () => {
    const pieces = [...(await made('R_total = R_R1 + R_R2 − 3 Ω')).children];
    expect(pieces.map(({ textContent }) => textContent)).to.deep.equal(['Rtotal', '=RR1', '+RR2', '−3Ω']);
    expect(pieces.slice(1).every((each) => each.firstElementChild?.localName === 'mo')).to.equal(true);
  });

  it('a block’s name without its outer brackets', async () => {
    const [subscript] = (await made('R_(R2∥(R3+R4))')).querySelectorAll('mtext');
    expect(subscript!.textContent).to.equal('R2∥(R3+R4)');
  });

  it('without markup, whatever stands there', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(fc.string({ unit: 'grapheme' }), fc.constantFrom('<b>x</b>', '<img src=x>', '&lt;')),
        async (text) => {
          const page = await made(text);
          for (const each of page.querySelectorAll('*'))
            expect(each.namespaceURI, text).to.equal('http://www.w3.org/1998/Math/MathML');
        },
      ),
      { numRuns: 30 },
    );
  });
});
