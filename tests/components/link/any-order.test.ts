import { expect, nextFrame } from '@open-wc/testing';
import fc from 'fast-check';
import { newPage, type Page } from '../new-page.ts';
import type { Reader } from './reader.ts';

const script = new URL('./page-in-frame.js', import.meta.url);

/** Settles: observers, definitions and renders all run before the next frame but one. */
async function settled(): Promise<void> {
  await nextFrame();
  await nextFrame();
}

/** The name that the board of each reader has now, and the reader's trouble; a board that is only renamed is no news to it. */
const readers = (body: HTMLElement): string[] =>
  [...body.querySelectorAll<Reader>('x-reader')].map(
    ({ shown, shadowRoot }) => `${shown?.id ?? '-'}|${shadowRoot?.textContent.replace(/^.*?\|/, '')}`,
  );

const place = fc.nat({ max: 6 });
const name = fc.constantFrom('a', 'b', 'c', '');
const act = fc.oneof(
  fc.record({
    do: fc.constant('add'),
    tag: fc.constantFrom('rheolet-board', 'x-reader', 'section'),
    place,
    name,
  }),
  fc.record({ do: fc.constant('move'), from: place, place }),
  fc.record({ do: fc.constant('remove'), from: place }),
  fc.record({ do: fc.constant('rename'), from: place, name }),
  fc.record({ do: fc.constant('define'), tag: fc.constantFrom('rheolet-board', 'x-reader') }),
  fc.record({ do: fc.constant('wait') }),
);
type Act = typeof act extends fc.Arbitrary<infer T> ? T : never;

function pick(body: HTMLElement, index: number): Element | undefined {
  const all = [...body.querySelectorAll('*')];
  return all[index % all.length];
}

function perform(page: Page, removed: Element[], step: Act): void {
  const { body } = page;
  const at = 'place' in step ? (pick(body, step.place) ?? body) : body;
  const on = 'from' in step ? (pick(body, step.from) ?? removed.pop()) : undefined;
  const target = at.localName === 'x-reader' || on?.contains(at) ? body : at;
  if (step.do === 'add' && 'tag' in step && 'place' in step) {
    const element = body.ownerDocument.createElement(step.tag);
    if (step.name) element.setAttribute(step.tag === 'x-reader' ? 'board' : 'id', step.name);
    target.append(element);
  } else if (step.do === 'move' && on) target.append(on);
  else if (step.do === 'remove' && on?.isConnected) {
    on.remove();
    removed.push(on);
  } else if (step.do === 'rename' && on && 'name' in step) {
    on.setAttribute(on.localName === 'x-reader' ? 'board' : 'id', step.name);
  } else if (step.do === 'define' && 'tag' in step) page.define(step.tag);
}

describe('a page on which elements come, go, move and are renamed', () => {
  it('ends in the state of a fresh page, in whatever order things happen', async function () {
    this.timeout(60_000);
    await fc.assert(
      fc.asyncProperty(fc.boolean(), fc.array(act, { minLength: 3, maxLength: 24 }), async (early, acts) => {
        const page = await newPage(script);
        if (early) for (const tag of ['rheolet-board', 'x-reader']) page.define(tag);
        const removed: Element[] = [];
        for (const step of acts) {
          if (step.do === 'wait') await settled();
          else perform(page, removed, step);
        }
        page.define('rheolet-board');
        page.define('x-reader');
        await settled();
        const lived = readers(page.body);
        const fresh = page.body.cloneNode(true) as HTMLElement;
        page.body.replaceWith(fresh);
        await settled();
        const born = readers(fresh);
        page.frame.remove();
        expect(lived).to.deep.equal(born);
      }),
      { numRuns: 40, interruptAfterTimeLimit: 45_000 },
    );
  });
});
