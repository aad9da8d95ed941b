import { expect, fixture, html } from '@open-wc/testing';
import fc from 'fast-check';
import { sendKeys } from '@web/test-runner-commands';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import type { RheoletSteps } from '../../../src/components/steps/index.ts';
import { settled } from '../beside-board.ts';
import { bench, heard, press, seen } from './bench.ts';
import { eventually } from '../eventually.ts';

const answers = ({ shadowRoot }: RheoletSteps): string[] =>
  [...shadowRoot!.querySelectorAll('[part~=answer] .heard')].map(({ textContent }) => textContent.trim());

describe('a worked solution on a page that changes', () => {
  const line = 'B1 6 V + R1 [2..40] 12 Ω';

  it('stands before its board', async () => {
    const page = await fixture<HTMLElement>(
      html`<div>
        <rheolet-steps board="pump" of="V_R1" mode="whole"></rheolet-steps>
        <rheolet-board id="pump" circuit=${line}></rheolet-board>
      </div>`,
    );
    await page.querySelector<RheoletBoard>('rheolet-board')!.ready;
    const steps = page.querySelector<RheoletSteps>('rheolet-steps')!;
    await eventually(() => answers(steps).length === 1);
    expect(answers(steps)).to.deep.equal(['equals 6.00 V']);
  });

  it('stands inside its board', async () => {
    const board = await fixture<RheoletBoard>(
      html`<rheolet-board circuit=${line}
        ><rheolet-steps of="I_R1" mode="whole"></rheolet-steps
      ></rheolet-board>`,
    );
    await board.ready;
    const steps = board.querySelector<RheoletSteps>('rheolet-steps')!;
    await eventually(() => answers(steps).length === 1);
    expect(steps.checkVisibility()).to.equal(true);
  });

  it('keeps what is uncovered when it is moved', async () => {
    const made = await bench();
    await press(made, 'Next step', 4);
    const other = document.createElement('section');
    made.page.append(other);
    other.append(made.element);
    await settled();
    expect(seen(made).length).to.equal(4);
  });

  it('begins anew where another thing is asked', async () => {
    const made = await bench();
    await press(made, 'Next step', 4);
    made.element.of = 'P_R4';
    await settled();
    expect(seen(made).length).to.equal(0);
    made.element.mode = 'whole';
    await settled();
    expect(made.texts('[part~=answer] .heard').length).to.equal(1);
  });

  it('says what is missing where there is no board', async () => {
    const made = await bench({ of: 'I_R3', board: 'pump' });
    made.board.remove();
    await settled();
    expect(made.part('problem')).to.equal('There is no board “pump” here.');
  });

  it('waits while something moves, and follows when it rests', async () => {
    const made = await bench({ of: 'I_R1', mode: 'whole' }, line);
    const before = heard(made);
    made.board.move('R1', '24');
    await settled();
    expect(heard(made)).to.deep.equal(before);
    made.board.set('R1', '24');
    await eventually(() => heard(made).at(-1) === 'equals 0.250 A', heard(made).at(-1));
  });

  it('two of them read one board, each by itself', async () => {
    const made = await bench();
    const other = document.createElement('rheolet-steps');
    other.setAttribute('of', 'V_R2');
    made.page.append(other);
    await settled();
    await press(made, 'Next step', 2);
    expect(seen(made).length).to.equal(2);
    expect(other.shadowRoot!.querySelectorAll('[part=step]:not(.later)').length).to.equal(0);
  });

  it('reads from left to right, and in English, in any page', async () => {
    const made = await bench({ of: 'I_R3', mode: 'whole' });
    made.page.dir = 'rtl';
    made.page.lang = 'ar';
    await settled();
    const [item] = seen(made);
    expect(getComputedStyle(item!).direction).to.equal('ltr');
    expect(item!.closest('[lang]')?.getAttribute('lang')).to.equal('en');
  });

  it('leaves undoing to the board', async () => {
    const made = await bench();
    made.board.set('R1', '8');
    await settled();
    await made.tab();
    await sendKeys({ down: 'Control' });
    await sendKeys({ press: 'z' });
    await sendKeys({ up: 'Control' });
    expect(made.board.settings).to.deep.equal({});
  });
});

describe('of any circuit', () => {
  const part = fc.letrec<{ part: (next: () => number) => string }>((tie) => ({
    part: fc.oneof(
      { depthSize: 'xsmall', withCrossShrink: true },
      fc.integer({ min: 1, max: 60 }).map((ohms) => (next: () => number) => `R${next()} ${ohms} Ω`),
      fc.tuple(fc.constantFrom(' + ', ' ∥ '), fc.array(tie('part'), { minLength: 2, maxLength: 3 })).map(
        ([sign, parts]) =>
          (next: () => number) =>
            `(${parts.map((one) => one(next)).join(sign)})`,
      ),
    ),
  })).part;

  it('what the last step gives is what the board reads', async () => {
    const made = await bench({ of: 'I_R1', mode: 'whole' });
    await fc.assert(
      fc.asyncProperty(part, fc.constantFrom('I_R1', 'V_R1', 'R_total', 'P_R1'), async (build, of) => {
        let count = 0;
        made.element.of = of;
        await made.show(`B1 12 V r 1 Ω + ${build(() => (count += 1))}`);
        const value = Number(made.board.solution?.quantity(of));
        const [text = ''] = made.texts('[part~=answer] .heard');
        if (made.part('reason')) {
          expect(made.part('reason')).to.contain('nothing to work out');
          return;
        }
        const [, number = '', prefix = ''] = /([\d.]+) ([mk]?)[AVΩW]$/.exec(text) ?? [];
        const shown = Number(number) * ({ m: 1e-3, k: 1e3 }[prefix] ?? 1);
        expect(Math.abs(shown - value) <= 0.006 * value, `${text} for ${value}`).to.equal(true);
        expect(made.all('[part=step] p:empty').length).to.equal(0);
      }),
      { numRuns: 12 },
    );
  });
});
