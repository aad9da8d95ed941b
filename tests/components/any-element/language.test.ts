import { expect } from '@open-wc/testing';
import '../../../src/components/all.ts';
import { besideBoard } from '../beside-board.ts';

const quay = 'B1 6 V + S1 closed + A1 + R1 [4..40] 12 Ω + (LDR1 8 kΩ ∥ L1 24 Ω)';

/** The words in a part of a page that a screen reader would pronounce in the language of the page round it. */
const foreign = (root: ParentNode): readonly string[] =>
  [...root.querySelectorAll(':not(style)')]
    .filter((each) => each.closest('[lang]')?.getAttribute('lang') !== 'en')
    .flatMap((each) => {
      const own = [...each.childNodes].map((node) => (node instanceof Text ? node.data : ''));
      return [...own, each.ariaLabel ?? '', each.ariaValueText ?? ''];
    })
    .filter((text) => /[a-z]{3}/i.test(text));

describe('in a page of another language English sentences are told to be English by', () => {
  const before = document.documentElement.lang;
  beforeEach(() => (document.documentElement.lang = 'de'));
  afterEach(() => (document.documentElement.lang = before));

  for (const [tag, attributes] of [
    ['rheolet-rules', {}],
    ['rheolet-rules', { board: 'pump' }],
    ['rheolet-steps', { of: 'I_A1', mode: 'whole' }],
    ['rheolet-graph', { of: 'I_A1', against: 'R1' }],
    ['rheolet-levels', {}],
    ['rheolet-switch', {}],
    ['rheolet-activity', {}],
  ] as const)
    it(`${tag} ${Object.values(attributes).join(' ')}`.trim(), async () => {
      const { element } = await besideBoard(tag, quay, attributes);
      expect(element.shadowRoot!.textContent).to.match(/[a-z]{3}/i);
      expect(foreign(element.shadowRoot!)).to.deep.equal([]);
    });
});
