import { expect, fixture, html, nextFrame } from '@open-wc/testing';
import { ReactiveElement } from 'lit';
import '../../../src/components/all.ts';

/** A reader of the board, with what it needs to have something to show. */
const readers: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'rheolet-resistor': { of: 'R1' },
  'rheolet-supply': { of: 'B1' },
  'rheolet-surroundings': {},
  'rheolet-switch': { of: 'S1' },
  'rheolet-value': { of: 'I_R1' },
  'rheolet-meter': { measures: 'I_R1' },
  'rheolet-table': { columns: 'I_R1' },
  'rheolet-rules': {},
  'rheolet-graph': { of: 'I_R1' },
  'rheolet-levels': {},
  'rheolet-board': { circuit: 'B1 6 V + L1 8 Ω' },
};
const line = 'B1 [1..6] 6 V + S1 closed + R1 [4..40] 12 Ω + TH1 10 kΩ';

for (const [tag, attributes] of Object.entries(readers)) {
  it(`${tag} that comes to a page together with its board renders once`, async () => {
    const page = await fixture<HTMLElement>(html`<div></div>`);
    const board = document.createElement('rheolet-board');
    board.setAttribute('circuit', line);
    board.id = 'quay';
    const reader = document.createElement(tag);
    if (!(reader instanceof ReactiveElement)) throw new Error(tag);
    for (const [name, value] of Object.entries({ ...attributes, board: 'quay' }))
      reader.setAttribute(name, value);
    let renders = 0;
    reader.addController({ hostUpdated: () => (renders += 1) });
    page.append(board, reader);
    await board.ready;
    for (let frame = 0; frame < 4; frame++) await nextFrame();
    expect(renders).to.equal(1);
  });
}
