import { expect } from '@open-wc/testing';
import '../../../src/components/all.ts';
import { besideBoard } from '../beside-board.ts';

const quay = 'B1 6 V + S1 closed + A1 + R1 [4..40] 12 Ω + (LDR1 8 kΩ ∥ L1 24 Ω)';

/** The words in a part of a page that a screen reader would pronounce as English, or in the language of the page round it. */
const pronounced = (root: ParentNode, as: 'English' | 'page'): readonly string[] =>
  [...root.querySelectorAll(':not(style)')]
    .filter((each) => (each.closest('[lang]')?.getAttribute('lang') === 'en') === (as === 'English'))
    .flatMap((each) => {
      const own = [...each.childNodes].map((node) => (node instanceof Text ? node.data.trim() : ''));
      return [...own, each.ariaLabel ?? '', each.ariaValueText ?? ''];
    })
    .filter((text) => /[a-z]{3}/i.test(text));

describe('in a page of another language English sentences are told to be English by', () => {
  const before = document.documentElement.lang;
  beforeEach(() => (document.documentElement.lang = 'de'));
  afterEach(() => (document.documentElement.lang = before));

  for (const [tag, attributes] of [
    ['rheolet-value', { of: 'I_A1' }],
    ['rheolet-value', { of: 'I_A9' }],
    ['rheolet-value', { of: 'I_A1', board: 'pump' }],
    ['rheolet-meter', { of: 'A1' }],
    ['rheolet-meter', { of: 'V_R1', face: 'needle' }],
    ['rheolet-table', {}],
    ['rheolet-table', { mode: 'blank' }],
    ['rheolet-table', { record: 'I_A1' }],
    ['rheolet-claim', {}],
    ['rheolet-claim', { choices: 'I_A1 > 0' }],
    ['rheolet-resistor', {}],
    ['rheolet-supply', {}],
    ['rheolet-surroundings', {}],
    ['rheolet-steps', { of: 'I_A1', board: 'pump' }],
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
      expect(pronounced(element.shadowRoot!, 'English')).not.to.be.empty;
      expect(pronounced(element.shadowRoot!, 'page')).to.deep.equal([]);
    });

  it('a board', async () => {
    const { board } = await besideBoard('rheolet-value', `${quay} -> I_A1`);
    expect(pronounced(board.shadowRoot!, 'English')).not.to.be.empty;
    expect(pronounced(board.shadowRoot!, 'page')).to.deep.equal([]);
  });

  for (const [tag, attributes] of [
    ['rheolet-meter', { of: 'A1' }],
    ['rheolet-table', {}],
    ['rheolet-claim', {}],
    ['rheolet-resistor', {}],
    ['rheolet-supply', {}],
    ['rheolet-switch', {}],
  ] as const)
    it(`${tag}, and the teacher’s label is not`, async () => {
      const { element } = await besideBoard(tag, quay, { ...attributes, label: 'Leuchtfeuer' });
      expect(new Set(pronounced(element.shadowRoot!, 'page'))).to.deep.equal(new Set(['Leuchtfeuer']));
    });
});
