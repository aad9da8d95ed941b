import { expect, nextFrame } from '@open-wc/testing';
import fc from 'fast-check';
import { pumpLine, quayLine } from '../board/bench.ts';
import { newPage } from '../new-page.ts';

const script = new URL('./lesson-in-frame.js', import.meta.url);
const tags = ['rheolet-board', 'rheolet-meter', 'rheolet-resistor', 'rheolet-rules', 'rheolet-value'];

/** All boards are drawn, also those out of sight, and whoever reads them has had a frame. */
async function settled(body: HTMLElement): Promise<void> {
  for (const board of body.querySelectorAll('rheolet-board')) if ('ready' in board) await board.ready;
  for (let frame = 0; frame < 4; frame += 1) await nextFrame();
}

/** What every element of a page shows, in order, its drawings in words. */
function seen(body: HTMLElement): string[] {
  return [...body.querySelectorAll('*')]
    .filter(({ localName }) => localName.startsWith('rheolet-'))
    .map(({ localName, shadowRoot }) => {
      const names = [...(shadowRoot?.querySelectorAll('[data-id], [aria-valuetext]') ?? [])];
      const heard = names.map(
        (each) => each.getAttribute('aria-label') ?? each.getAttribute('aria-valuetext'),
      );
      return `${localName}: ${(shadowRoot?.textContent ?? '').replace(/\s+/g, ' ')} ${heard.join('; ')}`;
    });
}

const place = fc.nat({ max: 7 });
const board = fc.constantFrom('quay', 'pump', '');
const act = fc.oneof(
  fc.record({ do: fc.constant('add' as const), tag: fc.constantFrom(...tags), place, name: board }),
  fc.record({ do: fc.constant('move' as const), from: place, place }),
  fc.record({ do: fc.constant('remove' as const), from: place }),
  fc.record({ do: fc.constant('rename' as const), from: place, name: board }),
  fc.record({ do: fc.constant('define' as const), tag: fc.constantFrom(...tags) }),
  fc.record({ do: fc.constant('wait' as const) }),
);
type Act = typeof act extends fc.Arbitrary<infer T> ? T : never;

const asked: Readonly<Record<string, string>> = {
  'rheolet-meter': 'I_B1',
  'rheolet-resistor': 'R1',
  'rheolet-value': 'V_L1',
};

function elementFor(page: Document, tag: string, name: string): HTMLElement {
  const made = page.createElement(tag);
  made.setAttribute(tag === 'rheolet-board' ? 'id' : 'board', name);
  if (tag === 'rheolet-board') made.setAttribute('circuit', name === 'pump' ? pumpLine : quayLine);
  const of = asked[tag];
  if (of) made.setAttribute('of', of);
  return made;
}

function perform(body: HTMLElement, define: (tag: string) => void, step: Act): void {
  const pick = (index: number): Element | undefined =>
    [...body.children].at(index % Math.max(1, body.children.length));
  if (step.do === 'add') {
    body.insertBefore(elementFor(body.ownerDocument, step.tag, step.name), pick(step.place) ?? null);
  } else if (step.do === 'move') pick(step.place)?.after(pick(step.from) ?? '');
  else if (step.do === 'remove') pick(step.from)?.remove();
  else if (step.do === 'define') define(step.tag);
  else if (step.do === 'rename') {
    const element = pick(step.from);
    element?.setAttribute(element.localName === 'rheolet-board' ? 'id' : 'board', step.name);
  }
}

describe('a page of boards, meters, rules, resistors and values', () => {
  it('ends in the state of a fresh page, in whatever order things come, go, move, are renamed and defined', async function () {
    this.timeout(90_000);
    await fc.assert(
      fc.asyncProperty(
        fc.subarray(tags),
        fc.array(act, { minLength: 4, maxLength: 20 }),
        async (early, acts) => {
          const { frame, body, define } = await newPage(script);
          early.forEach(define);
          for (const step of acts) {
            perform(body, define, step);
            if (step.do === 'wait') await nextFrame();
          }
          tags.forEach(define);
          await settled(body);
          const lived = seen(body);
          const fresh = body.cloneNode(true) as HTMLElement;
          body.replaceWith(fresh);
          await settled(fresh);
          const born = seen(fresh);
          frame.remove();
          expect(lived).to.deep.equal(born);
        },
      ),
      { numRuns: 20, interruptAfterTimeLimit: 60_000 },
    );
  });
});
