import { expect, fixture, html, nextFrame } from '@open-wc/testing';
import { LitElement } from 'lit';
import { tags } from './elements.ts';

const line = (ohms: number): string =>
  `B1 [1..6] 6 V r [0..2] 1 Ω + S1 closed + R1 [4..40] ${ohms} Ω + TH1 10 kΩ`;
const attributes: readonly (readonly [string, string])[] = [
  ['of', 'R1'],
  ['of', ''],
  ['label', 'Quay lights'],
  ['disabled', ''],
  ['board', 'pier'],
  ['board', 'nowhere'],
  ['board', 'quay'],
];

/** What Lit has to say while something is done. */
async function warnedOf(work: () => Promise<void>): Promise<readonly string[]> {
  const { warn } = console;
  const said: string[] = [];
  console.warn = (...words: unknown[]) => void said.push(words.join(' '));
  try {
    await work();
  } finally {
    console.warn = warn;
  }
  return said;
}

for (const tag of tags) {
  it(`${tag} asks for no other update while one ends, whatever it is told`, async () => {
    const page = await fixture<HTMLElement>(html`<div></div>`);
    for (const [id, ohms] of [
      ['quay', 12],
      ['pier', 20],
    ] as const) {
      const board = document.createElement('rheolet-board');
      board.id = id;
      board.setAttribute('circuit', line(ohms));
      page.append(board);
      await board.ready;
    }
    const warnings = await warnedOf(async () => {
      const element = document.createElement(tag);
      if (!(element instanceof LitElement)) throw new Error(tag);
      page.append(element);
      for (const [name, value] of attributes) {
        await element.updateComplete;
        element.setAttribute(name, value);
        await nextFrame();
      }
      await element.updateComplete;
      await nextFrame();
    });
    expect(warnings.filter((each) => each.includes('scheduled an update'))).to.deep.equal([]);
  });
}
