import { expect, fixture, html, nextFrame } from '@open-wc/testing';
import fc from 'fast-check';
import '../../../src/components/all.ts';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import { parseCircuit, solveExact, withValue } from '../../../src/engine/index.ts';
import { settled } from '../beside-board.ts';
import { Bench, drag, quayLine, sliderOf, text } from '../board/bench.ts';

/** What a teacher pastes into a page. */
async function lesson(id = 'quay'): Promise<HTMLElement> {
  const root = await fixture<HTMLElement>(
    html`<article>
      <rheolet-board id=${id} circuit=${quayLine}
        >A 6 V supply and an ammeter, then a fog lamp's control of 4 to 40 ohms beside a second ammeter with a
        lamp of 8 ohms.</rheolet-board
      >
      <p>
        Turn the fog-lamp control <rheolet-resistor board=${id} of="R1"></rheolet-resistor>: the main ammeter
        reads <rheolet-value board=${id} of="I_A1"></rheolet-value>.
      </p>
      <rheolet-meter board=${id} of="A2"></rheolet-meter>
      <rheolet-rules board=${id}></rheolet-rules>
    </article>`,
  );
  await root.querySelector('rheolet-board')?.ready;
  await settled();
  return root;
}

const inside = (root: Element, tag: string): string =>
  (root.querySelector(tag)?.shadowRoot?.textContent ?? '').replace(/\s+/g, ' ');

/** All that the page reads, as a pupil sees it. */
function seen(root: HTMLElement): readonly string[] {
  const board = root.querySelector<RheoletBoard>('rheolet-board')!;
  const bench = new Bench(board);
  return [
    bench.digits('A1'),
    bench.digits('A2'),
    bench.digits('R1'),
    bench.ribbons,
    bench.component('A1').getAttribute('aria-label') ?? '',
    bench.slider.value,
    sliderOf(root.querySelector('p rheolet-resistor')!).value,
    inside(root, 'rheolet-value'),
    inside(root, 'rheolet-meter'),
    inside(root, 'rheolet-rules'),
  ];
}

describe('a lesson as a teacher pastes it', () => {
  it('works with attributes alone', async () => {
    const root = await lesson();
    expect(inside(root, 'rheolet-value')).to.contain('1.25');
    expect(inside(root, 'rheolet-meter')).to.contain('0.750');
    expect(inside(root, 'rheolet-rules')).to.not.equal('');
    drag(sliderOf(root.querySelector('p rheolet-resistor')!), 0, true);
    await settled();
    expect(inside(root, 'rheolet-value')).to.contain('2.25');
  });

  it('reads the same after any movements as a page that was set so at once', async () => {
    const root = await lesson();
    const fresh = await lesson('fresh');
    fresh.style.setProperty('position', 'fixed'); // both in sight: what is not is not touched
    fresh.style.setProperty('inset', '0');
    await settled();
    const settings = fc.array(fc.integer({ min: 0, max: 36 }), { minLength: 1, maxLength: 8 });
    await fc.assert(
      fc.asyncProperty(
        settings,
        fc.array(fc.boolean(), { minLength: 8, maxLength: 8 }),
        async (path, outside) => {
          const sliders = [
            sliderOf(root.querySelector('p rheolet-resistor')!),
            new Bench(root.querySelector('rheolet-board')!).slider,
          ];
          for (const [step, setting] of path.entries()) {
            const slider = sliders[Number(outside[step])]!;
            drag(slider, setting, false);
            if (setting % 3 === 0) await nextFrame();
            if (setting % 2 === 0) drag(slider, setting, true);
          }
          const last = path.at(-1) ?? 0;
          drag(sliders[0]!, last, true);
          fresh.querySelector('rheolet-board')!.set('R1', last + 4);
          await settled();
          expect(seen(root)).to.deep.equal(seen(fresh));
        },
      ),
      { numRuns: 25, includeErrorInReport: true },
    );
  });

  it('shows what the exact solution says, at every setting', async () => {
    const root = await lesson();
    const board = root.querySelector('rheolet-board')!;
    for (let ohms = 4; ohms <= 40; ohms += 4) {
      board.set('R1', ohms);
      await settled();
      const exact = solveExact(withValue(parseCircuit(quayLine), 'R1', ohms)).quantity('I_A1');
      const shown = /[\d.]+/.exec(inside(root, 'rheolet-value'))?.[0];
      expect(shown, `${ohms} Ω`).to.equal(Number(exact).toPrecision(3));
    }
  });

  it('covers every reading of a board that is covered, wherever it stands', async () => {
    const root = await lesson();
    const board = root.querySelector('rheolet-board')!;
    board.hide = 'readings';
    await settled();
    await settled();
    for (const tag of ['rheolet-value', 'rheolet-meter', 'rheolet-rules']) {
      expect(inside(root, tag), tag).to.not.match(/1\.25|0\.75|6\.00/);
    }
  });

  it('says in every element the name that is not there, also when it is another one', async () => {
    const root = await lesson();
    root.querySelector('rheolet-board')?.remove();
    for (const name of ['key', 'kay']) {
      for (const element of root.querySelectorAll('[board]')) element.setAttribute('board', name);
      await settled();
      for (const tag of ['rheolet-value', 'rheolet-meter', 'rheolet-rules', 'rheolet-resistor']) {
        expect(inside(root, tag), tag).to.contain(`There is no board “${name}” here.`);
      }
    }
  });

  it('is left unharmed by one board that cannot be read', async () => {
    const root = await lesson();
    const before = seen(root);
    const bad = document.createElement('rheolet-board');
    bad.setAttribute('circuit', 'B1 6 V + + R1');
    root.append(bad);
    await bad.ready;
    await settled();
    expect(seen(root)).to.deep.equal(before);
    expect(text(bad.shadowRoot!.querySelector('[part=problem]')!)).to.match(/column/);
  });

  it('survives being taken apart and put together in another place', async () => {
    const root = await lesson();
    const before = seen(root);
    const parts = [...root.children];
    for (const part of parts) part.remove();
    await nextFrame();
    root.append(...parts.toReversed());
    await settled();
    root.append(...parts);
    await settled();
    expect(seen(root)).to.deep.equal(before);
  });
});
