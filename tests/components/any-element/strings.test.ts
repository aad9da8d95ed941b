import { expect, fixture, html } from '@open-wc/testing';
import fc from 'fast-check';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import { settled } from '../beside-board.ts';
import { attributesOf, tags } from './elements.ts';
import { thrown } from './faults.ts';
import { anyText, otherText } from './text.ts';

type Sample = Readonly<Record<string, string | undefined>>;

/** What a program says when it has made a mistake, and a page should not. */
const slips = ['NaN', 'undefined', '[object', 'Infinity', 'null', '=>'];

/** All elements under a root, those in shadow roots too. */
function everything(root: ParentNode): Element[] {
  return [...root.querySelectorAll('*')].flatMap((element) => [
    element,
    ...(element.shadowRoot ? everything(element.shadowRoot) : []),
  ]);
}

/** Elements and attributes that the library never makes; text that was taken for markup would. */
function injected(root: ParentNode): string[] {
  return everything(root)
    .filter(
      ({ localName, attributes }) =>
        /^(img|script|iframe|i|b|object|embed|style|link|foreignObject)$/i.test(localName) ||
        [...attributes].some(({ name }) => /^on|^data-injected$/i.test(name)),
    )
    .map(({ outerHTML }) => outerHTML);
}

/** What an element shows and says, by itself. */
function said({ shadowRoot }: Element): string {
  if (!shadowRoot) return '';
  const values = everything(shadowRoot).flatMap(({ attributes }) =>
    [...attributes].map(({ value }) => value),
  );
  const inner = everything(shadowRoot).map((element) => element.shadowRoot?.textContent ?? '');
  return [shadowRoot.textContent, ...inner, ...values].join('\n');
}

function made(tag: string, { text, ...attributes }: Sample): HTMLElement {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes))
    if (value !== undefined) element.setAttribute(name, value);
  if (text !== undefined) element.textContent = text;
  return element;
}

/** Boards are drawn, and whoever reads them has had its frames. */
async function ready(root: HTMLElement): Promise<void> {
  for (const board of root.querySelectorAll('rheolet-board')) await board.ready;
  await settled();
}

/** Elements as they come from these samples: nothing thrown, no slip, nothing injected; and the page goes on. */
async function check(tag: string, samples: readonly Sample[]): Promise<void> {
  const root = await fixture<HTMLElement>(
    html`<div>
      <rheolet-board id="quay" circuit="B1 6 V + S1 closed + A1 + R1 [4..40] 12 Ω"></rheolet-board>
    </div>`,
  );
  const board = root.querySelector('rheolet-board')!;
  const elements = samples.map((sample) => made(tag, sample));
  root.append(...elements);
  await ready(root);
  for (const [place, element] of elements.entries()) {
    const given = JSON.stringify(samples[place]);
    const shown = said(element);
    const found = slips.filter((slip) => shown.includes(slip) && !given.includes(slip));
    expect(found, `${given} shows ${shown}`).to.deep.equal([]);
    expect(element.childElementCount, given).to.equal(0);
    if ('toSVG' in element) await wellFormed(element as RheoletBoard, given);
  }
  expect(injected(root)).to.deep.equal([]);
  expect('injected' in globalThis).to.equal(false);
  // Still alive: whatever stands here, a setting is followed, and a text that is right is shown.
  board.set('R1', 20);
  for (const element of elements)
    for (const name of attributesOf(tag)) element.setAttribute(name, name === 'board' ? 'quay' : '');
  await ready(root);
  expect(await board.toText()).to.contain('R1 [4..40] 20 Ω');
  root.remove();
  await settled();
  expect(thrown().join('\n')).to.equal('');
}

/** A board as a picture, where there is one, is XML in which nothing runs. */
async function wellFormed(board: RheoletBoard, given: string): Promise<void> {
  const picture = new DOMParser().parseFromString((await board.toSVG()) || '<svg/>', 'image/svg+xml');
  expect(picture.querySelector('parsererror')?.textContent, given).to.equal(undefined);
  expect(injected(picture), given).to.deep.equal([]);
}

/** Elements in which any string stands in the place that is named, and something likely or nothing in the others. */
function samplesOf(tag: string, place: string): fc.Arbitrary<Sample[]> {
  const others = Object.fromEntries(
    attributesOf(tag).map((other) => [
      other,
      other === 'board' ? fc.constant('quay') : fc.option(otherText, { nil: undefined }),
    ]),
  );
  return fc.array(fc.record({ ...others, [place]: anyText }), { minLength: 30, maxLength: 30 });
}

describe('any string, thirty times in each attribute and as the content,', () => {
  for (const tag of tags)
    it(`is taken by ${tag}`, async function () {
      this.timeout(60_000);
      const places = [...attributesOf(tag), 'text'].map((place) => samplesOf(tag, place));
      await fc.assert(
        fc.asyncProperty(fc.tuple(...places), (samples) => check(tag, samples.flat())),
        { numRuns: 1, endOnFailure: true, includeErrorInReport: true },
      );
    });
});
