import { expect, fixture, html } from '@open-wc/testing';
import '../../../src/components/board/define.ts';
import '../../../src/components/graph/define.ts';
import '../../../src/components/levels/define.ts';
import { settled } from '../beside-board.ts';

describe('what a page does not display yet, behind a tab or in closed details,', () => {
  for (const tag of ['rheolet-graph', 'rheolet-levels'])
    it(`is rendered all the same: ${tag}`, async () => {
      const page = await fixture(
        html`<div>
          <rheolet-board circuit="B1 6 V + R1 [4..40] 12 Ω"></rheolet-board>
          <section hidden></section>
        </div>`,
      );
      const element = document.createElement(tag);
      element.setAttribute('of', 'I_R1');
      element.setAttribute('against', 'R1');
      page.querySelector('section')!.append(element);
      await settled();
      expect(element.shadowRoot!.textContent).to.not.equal('');
    });
});
