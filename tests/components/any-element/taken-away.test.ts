import { expect, fixture, html } from '@open-wc/testing';
import { settled } from '../beside-board.ts';
import { attributesOf, tags } from './elements.ts';
import { thrown } from './faults.ts';

/** An element beside a board, and what it shows. */
async function beside(tag: string): Promise<{ element: HTMLElement; shown: () => string }> {
  const root = await fixture<HTMLElement>(html`
    <div>
      <rheolet-board
        id="quay"
        circuit="B1 6 V + S1 closed + A1 + R1 [4..40] 12 Ω + T1 4 Ω; V1 across R1"
      ></rheolet-board>
    </div>
  `);
  const element = document.createElement(tag);
  element.setAttribute(tag === 'rheolet-board' ? 'circuit' : 'board', 'quay');
  if (tag === 'rheolet-board') element.setAttribute('circuit', 'B1 6 V + R1 [4..40] 12 Ω');
  root.append(element);
  await root.querySelector('rheolet-board')!.ready;
  await settled();
  await settled();
  return { element, shown: () => (element.shadowRoot?.textContent ?? '').replace(/\s+/g, ' ') };
}

describe('what a page takes away from an element is as if it had never been given', () => {
  for (const tag of tags)
    it(tag, async () => {
      thrown();
      const { element, shown } = await beside(tag);
      const before = shown();
      // An aria-label is taken as a label, and taken away by the element itself.
      const own = tag === 'rheolet-board' ? 'circuit' : 'board';
      const names = attributesOf(tag).filter((each) => each !== own && each !== 'aria-label');
      const given = (): void => {
        for (const name of names) element.setAttribute(name, 'R1');
      };
      const ways: Readonly<Record<string, (name: string) => void>> = {
        removed: (name) => element.removeAttribute(name),
        'set to null': (name) => Object.assign(element, { [name]: null }),
        'set to undefined': (name) => Object.assign(element, { [name]: undefined }),
      };
      for (const [way, takeAway] of Object.entries(ways)) {
        given();
        await settled();
        for (const name of names) takeAway(name);
        await settled();
        await settled();
        expect(shown(), way).to.equal(before);
      }
      expect(thrown()).to.deep.equal([]);
    });
});
