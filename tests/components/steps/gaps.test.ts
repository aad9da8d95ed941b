import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { agreement, workedSolution, type Step } from '../../../src/engine/index.ts';
import { say } from '../../../src/engine/reasons/index.ts';
import { usualCourse } from '../../../src/engine/core.ts';
import { bench, box, button, fill, press, seen, type StepsBench } from './bench.ts';
import { eventually } from '../eventually.ts';

const cells = 'B1 6 V r 1 Ω + @a + R1 10 Ω + @b; B2 4.5 V r 0.5 Ω @b–@a';

function stepsOf({ board }: StepsBench, of: string): readonly Step[] {
  const wish = { of, given: '', lesson: '' };
  return workedSolution(board.circuit!, board.solution!, usualCourse, wish).derivation!.steps;
}

/** The step whose number is to be filled in now. */
const now = (made: StepsBench): number => Number(box(made).closest<HTMLElement>('li')!.dataset['step']);

/** Whether a number is still to be filled in. */
const isOpen = (made: StepsBench): boolean => made.all('[part=gap]').some((each) => each.checkVisibility());

async function gaps(circuit: string, of: string): Promise<StepsBench> {
  const made = await bench({ of, mode: 'gaps', board: 'quay' }, circuit);
  await eventually(() => box(made), 'a box');
  return made;
}

describe('a worked solution whose numbers are filled in', () => {
  const part = fc
    .array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 3 })
    .map((ohms) => ohms.map((one, place) => `R${place + 2} ${one} Ω`).join(' ∥ '));
  const circuit = fc
    .tuple(fc.integer({ min: 1, max: 24 }), fc.integer({ min: 1, max: 60 }), part)
    .map(([volts, ohms, rest]) => `B1 ${volts} V + R1 ${ohms} Ω + (${rest})`);

  it('is gone through to its end by the numbers that the engine has, of any circuit', async () => {
    await fc.assert(
      fc.asyncProperty(circuit, async (line) => {
        const made = await gaps(line, 'I_R2');
        const right: boolean[] = [];
        made.element.addEventListener('rheolet-answer', ({ detail }) => void right.push(detail.right));
        const steps = stepsOf(made, 'I_R2');
        for (const [place, step] of steps.entries()) {
          expect(now(made)).to.equal(place);
          await fill(made, step.text);
        }
        expect(box(made)).to.equal(undefined);
        expect(right).to.deep.equal(steps.map(() => true));
        expect(made.texts('[part~=answer] .heard').length).to.equal(1);
        made.page.remove();
      }),
      { numRuns: 8 },
    );
  });

  it('goes on only with what agrees, and says of the rest what the marker says', async () => {
    const made = await gaps('B1 12 V + R1 5 Ω + R2 2 Ω', 'P_R1');
    const steps = stepsOf(made, 'P_R1');
    const typed = fc.oneof(
      fc.double({ min: -50, max: 50, noNaN: true }).map((value) => value.toFixed(2)),
      fc.constantFrom('7', '1.71', '1,71 A', '1.7', '0.583', '14.7 W', '14.7', 'seven', '7 V', '-7'),
    );
    await fc.assert(
      fc.asyncProperty(typed, async (text) => {
        if (!isOpen(made)) return;
        const place = now(made);
        const mistake = agreement(text, steps[place]!);
        await fill(made, text);
        if (mistake === undefined) expect(isOpen(made) ? now(made) : steps.length).to.equal(place + 1);
        else {
          expect(now(made)).to.equal(place);
          expect(made.part('mistake')).to.equal(say({ code: 'gap mistake', data: { mistake } }));
          expect(box(made).getAttribute('aria-invalid')).to.equal('true');
        }
      }),
      { numRuns: 40 },
    );
  });

  it('leaves an empty box alone', async () => {
    const made = await gaps('B1 12 V + R1 5 Ω', 'I_R1');
    const told: object[] = [];
    made.element.addEventListener('rheolet-answer', ({ detail }) => void told.push(detail));
    await fill(made, '  ');
    expect([told.length, made.part('mistake'), made.part('count')]).to.deep.equal([0, '', '0 of 2']);
  });

  it('keeps what was filled in right while the board is turned to the same numbers, and begins anew with others', async () => {
    const made = await gaps('B1 12 V + R1 [2..40] 5 Ω', 'I_R1');
    await fill(made, '2.4');
    made.board.set('R1', '5');
    await made.element.updateComplete;
    expect(now(made)).to.equal(1);
    made.board.set('R1', '8');
    await eventually(() => made.part('count').startsWith('0'), made.part('count'));
    expect(made.everything).not.to.contain('2.40');
    await fill(made, '1.5');
    expect(now(made)).to.equal(1);
  });

  it('shows equations that need no number, and asks for every current that follows', async () => {
    const made = await gaps(cells, 'I_B2');
    const steps = stepsOf(made, 'I_B2');
    const asked: number[] = [];
    while (isOpen(made)) {
      asked.push(now(made));
      await fill(made, steps[now(made)]!.text);
    }
    const withNumbers = steps.flatMap(({ unknowns }, place) => (unknowns ? [] : [place]));
    expect(asked).to.deep.equal(withNumbers);
    expect(seen(made).length).to.equal(steps.length);
  });

  it('does not tell a number that is to come, however the page looks at it', async () => {
    const made = await gaps('B1 12 V + R1 5 Ω + R2 2 Ω', 'P_R1');
    for (const { gives } of stepsOf(made, 'P_R1')) {
      expect(made.everything, 'the answer').not.to.contain('14.7');
      expect(seen(made).at(-1)!.querySelectorAll('[part~=value]').length, gives).to.equal(0);
      await press(made, 'Show the number');
    }
    expect(made.everything).to.contain('14.7');
    expect(button(made, 'Show the number').disabled).to.equal(true);
  });

  it('nor while that which it is filled in with has not come yet', async () => {
    const made = await bench({ of: 'I_R1' }, 'B1 12 V + R1 5 Ω');
    const late = document.createElement('rheolet-steps');
    late.setAttribute('of', 'I_R1');
    late.setAttribute('mode', 'gaps');
    made.page.append(late);
    const told: string[] = [];
    const values = ({ addedNodes }: MutationRecord): Element[] =>
      [...addedNodes].flatMap((node) =>
        node instanceof Element ? [...node.querySelectorAll('[part~=value]')] : [],
      );
    const observer = new MutationObserver((records) => {
      told.push(...records.flatMap(values).map(({ textContent }) => textContent));
    });
    observer.observe(late.shadowRoot!, { subtree: true, childList: true });
    await eventually(() => late.shadowRoot!.querySelector('[part=gap]'), 'a box');
    observer.disconnect();
    expect(told).to.deep.equal([]);
  });
});
