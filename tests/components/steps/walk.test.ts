import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { sendKeys } from '@web/test-runner-commands';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import { workedSolution, type Step } from '../../../src/engine/index.ts';
import { say } from '../../../src/engine/reasons/index.ts';
import { usualCourse } from '../../../src/engine/core.ts';
import { bench, button, press, quay, seen, type StepsBench } from './bench.ts';

const bridge = 'B1 24 V + ((R1 150 Ω + @l + R4 300 Ω) ∥ (R2 50 Ω + @q + R5 250 Ω)); R3 100 Ω @q–@l';
const question = fc.constantFrom(
  [quay, 'I_R3'],
  [quay, 'P_R1'],
  ['B1 12 V r 1 Ω + R1 5 Ω', 'V_B1'],
  [bridge, 'I_R3'],
  ['R1 6 Ω ∥ (R2 2 Ω + R3 4 Ω)', 'R_total'],
);

/** The steps that the engine takes, which the element has to show. */
function stepsOf({ circuit, solution }: RheoletBoard, of: string): readonly Step[] {
  if (!circuit || !solution) return [];
  return workedSolution(circuit, solution, usualCourse, { of, given: '', lesson: '' }).derivation!.steps;
}

/** Of the last step that can be seen, the parts that can. */
const partsSeen = (made: StepsBench): string[] => {
  const last = seen(made).at(-1);
  const parts = [...(last?.querySelectorAll('[part]') ?? [])].filter((each) => each.checkVisibility());
  return parts.map((each) => each.getAttribute('part')!.replace(' answer', ''));
};

describe('along a worked solution, back and forth', () => {
  it('as many steps can be seen as were uncovered, and the page is told each time', async () => {
    const ways = fc.array(fc.constantFrom('Next step', 'Next step', 'Back', 'PageDown', 'PageUp'), {
      minLength: 4,
      maxLength: 14,
    });
    await fc.assert(
      fc.asyncProperty(question, ways, async ([circuit, of], pressed) => {
        const made = await bench({ of }, circuit);
        const steps = stepsOf(made.board, of);
        const told: number[] = [];
        const expected: number[] = [];
        made.element.addEventListener('rheolet-reveal', ({ detail }) => void told.push(detail.shown));
        let shown = 0;
        for (const one of pressed) {
          const before = shown;
          shown = Math.min(Math.max(shown + (/Next|Down/.test(one) ? 1 : -1), 0), steps.length);
          if (shown !== before) expected.push(shown);
          if (one.startsWith('Page')) {
            const key = new KeyboardEvent('keydown', { key: one, bubbles: true, composed: true });
            made.all('ol')[0]!.dispatchEvent(key);
          } else button(made, one).click();
          await made.element.updateComplete;
          expect(seen(made).length).to.equal(shown);
          expect(made.part('count')).to.equal(`${shown} of ${steps.length}`);
          expect(button(made, 'Next step').disabled).to.equal(shown === steps.length);
          expect(button(made, 'Back').disabled).to.equal(shown === 0);
          expect(made.all('[part~=answer]').some((each) => each.checkVisibility())).to.equal(
            shown === steps.length,
          );
        }
        expect(told).to.deep.equal(expected);
        made.page.remove();
      }),
      { numRuns: 12 },
    );
  });

  it('each hint says more than the one before, and each taken back says less', async () => {
    await fc.assert(
      fc.asyncProperty(question, async ([circuit, of]) => {
        const made = await bench({ of, mode: 'hints' }, circuit);
        const steps = stepsOf(made.board, of);
        const text = (): string =>
          made
            .all('[part=step] :not(.heard, :has(*))')
            .filter((each) => each.checkVisibility())
            .map(({ textContent }) => textContent.trim())
            .join('|');
        const said = [text()];
        while (!button(made, 'Next hint').disabled) {
          button(made, 'Next hint').click();
          await made.element.updateComplete;
          expect(text().length, `${said.length}: ${text()}`).to.be.above(said.at(-1)!.length);
          said.push(text());
        }
        expect(said.length - 1, 'hints').to.be.within(4 * steps.length, 5 * steps.length);
        while (!button(made, 'Back').disabled) {
          said.pop();
          button(made, 'Back').click();
          await made.element.updateComplete;
          expect(text()).to.equal(said.at(-1));
        }
        expect(said.length).to.equal(1);
        made.page.remove();
      }),
      { numRuns: 5 },
    );
  });

  it('a hint of a step that has no numbers to work with is its number at once', async () => {
    const made = await bench({ of: 'I_R1', mode: 'hints' }, 'B1 12 V + R1 4 Ω');
    await press(made, 'Next hint', 8);
    expect(partsSeen(made)).to.deep.equal(['look', 'why', 'symbols']);
    await press(made, 'Next hint');
    expect([partsSeen(made).at(-1), made.part('count')]).to.deep.equal(['value', '2 of 2']);
    await press(made, 'Back');
    expect(partsSeen(made)).to.deep.equal(['look', 'why', 'symbols']);
  });

  it('pointing at any step lights up what the engine says it is about', async () => {
    await fc.assert(
      fc.asyncProperty(question, async ([circuit, of]) => {
        const made = await bench({ of, mode: 'whole' }, circuit);
        const steps = stepsOf(made.board, of);
        for (const [place, item] of seen(made).entries()) {
          item.focus();
          expect([...made.lit].sort(), `step ${place}`).to.deep.equal([...steps[place]!.about].sort());
        }
        made.page.remove();
      }),
      { numRuns: 5 },
    );
  });
});

describe('what is uncovered is said', () => {
  const voice = (): string => document.querySelector('[data-rheolet-voice]')?.textContent ?? '';
  const spoken = async (made: StepsBench, name: string): Promise<string> => {
    const region = document.querySelector('[data-rheolet-voice]');
    if (region) region.textContent = '';
    button(made, name).click();
    const start = performance.now();
    while (!voice() && performance.now() - start < 2000) await made.element.updateComplete.then(() => wait());
    return voice().replaceAll('\u202f', ' ');
  };
  const wait = (): Promise<void> => new Promise((done) => setTimeout(done, 20));

  it('a step with what has to be known first, in words all through', async () => {
    const made = await bench({ of: 'I_R3' }, bridge);
    const steps = stepsOf(made.board, 'I_R3');
    const first = await spoken(made, 'Next step');
    expect(first).to.match(/^No rule alone leads to current through R3: .* unknown currents/);
    expect(first).to.contain('current through R1 is counted through R1');
    expect(first).to.match(/equation \(1\)$/);
    for (const step of steps.slice(1)) {
      const words = await spoken(made, 'Next step');
      expect(words).not.to.match(/_|Look at/);
      expect(words, say(step.why)).to.match(/ equals |equation \(\d+\)$/);
    }
    expect(made.part('count')).to.equal(`${steps.length} of ${steps.length}`);
  });

  it('of hints the one that came, the same number not twice, and nothing when one goes', async () => {
    const made = await bench({ of: 'I_R1', mode: 'hints' }, 'B1 12 V + R1 4 Ω');
    const said = [];
    for (let hint = 0; hint < 9; hint += 1) said.push(await spoken(made, 'Next hint'));
    expect(said).to.deep.equal([
      'Look at B1 and R1.',
      'For R1: p.d. is current times resistance.',
      'current through B1 equals e.m.f. of B1 divided by resistance of R1',
      'current through B1 equals 12.0 V divided by 4.00 Ω',
      'current through B1 equals 3.00 A',
      'Look at B1 and R1.',
      'The same current flows through R1 and B1.',
      'current through R1 equals current through B1',
      'current through R1 equals 3.00 A',
    ]);
    const region = document.querySelector('[data-rheolet-voice]')!;
    region.textContent = '';
    await press(made, 'Back');
    expect(voice()).to.equal('');
  });
});

describe('keys that are not for it are left to the page', () => {
  const prevented = (made: StepsBench, selector: string, key: string): boolean => {
    const event = new KeyboardEvent('keydown', { key, bubbles: true, composed: true, cancelable: true });
    made.all(selector)[0]!.dispatchEvent(event);
    return event.defaultPrevented;
  };

  it('a page scrolls by PageDown where nothing is uncovered by it', async () => {
    for (const mode of ['whole', 'gaps']) {
      const made = await bench({ of: 'I_R3', mode });
      expect(prevented(made, '[part=step]', 'PageDown'), mode).to.equal(false);
      made.page.remove();
    }
    const made = await bench();
    expect(prevented(made, '[part=step]', 'PageDown')).to.equal(true);
    expect(prevented(made, '[part=step]', 'a')).to.equal(false);
  });

  it('arrow keys move in a box, not from step to step', async () => {
    const made = await bench({ of: 'I_R3', mode: 'gaps' });
    expect(prevented(made, '[part=gap]', 'Home')).to.equal(false);
    expect(prevented(made, '[part=step]', 'Home')).to.equal(true);
  });

  it('and the Tab key comes back to the step that was left', async () => {
    const made = await bench({ of: 'I_R3', mode: 'whole' });
    await made.tab();
    await sendKeys({ press: 'ArrowDown' });
    await sendKeys({ press: 'ArrowDown' });
    await made.tab();
    const active = made.element.shadowRoot!.activeElement as HTMLElement | null;
    expect(active?.dataset['step']).to.equal('2');
    expect(made.all('[part=step][tabindex="0"]').length).to.equal(1);
  });

  it('nothing stays lit when it is taken away', async () => {
    const made = await bench({ of: 'I_R3', mode: 'whole' });
    await made.tab();
    expect(made.lit.length).to.be.above(0);
    made.element.remove();
    expect(made.lit).to.deep.equal([]);
  });
});
