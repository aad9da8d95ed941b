// A slider, its box and its steps against a model of them: whatever a pupil does in whatever order, all three show what the board has.
import { expect, fixture, html, nextFrame } from '@open-wc/testing';
import fc from 'fast-check';
import '../../../src/components/board/define.ts';
import '../../../src/components/resistor/define.ts';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import type { RheoletResistor } from '../../../src/components/resistor/index.ts';

/** What a pupil does: slides to a share of the way, presses a step, types a number of ohms, or words. */
type Act =
  | { readonly does: 'slide'; readonly share: number }
  | { readonly does: 'step'; readonly by: 1 | -1 }
  | { readonly does: 'type'; readonly text: string };

const act: fc.Arbitrary<Act> = fc.oneof(
  fc.record({ does: fc.constant('slide' as const), share: fc.double({ min: 0, max: 1, noNaN: true }) }),
  fc.record({ does: fc.constant('step' as const), by: fc.constantFrom(1 as const, -1 as const) }),
  fc.record({
    does: fc.constant('type' as const),
    text: fc.oneof(
      fc.integer({ min: -5, max: 130 }).map(String),
      fc.constantFrom('', 'many', '12 V', '0.03 kΩ', '1/3', '17.4', '1,000', '−3', '9e9'),
    ),
  }),
);

/** A range of whole steps. */
const ranges = fc
  .tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 1, max: 40 }), fc.constantFrom(1, 2, 0.5))
  .map(([min, steps, step]) => ({ min, max: min + steps * step, step, last: steps }));

interface Made {
  readonly board: RheoletBoard;
  readonly resistor: RheoletResistor;
  readonly box: (name: 'slider' | 'value') => HTMLInputElement;
  readonly step: (by: 1 | -1) => HTMLButtonElement;
  readonly problem: () => string;
  readonly settle: () => Promise<void>;
}

/** The page of one circuit at a time: a second board would make it unclear which one is meant. */
let shown: HTMLElement | undefined;

async function make(circuit: string): Promise<Made> {
  shown?.remove();
  const page = await fixture<HTMLElement>(
    html`<div>
      <rheolet-board circuit=${circuit}></rheolet-board><rheolet-resistor of="R1"></rheolet-resistor>
    </div>`,
  );
  shown = page;
  const board = page.querySelector('rheolet-board')!;
  const resistor = page.querySelector('rheolet-resistor')!;
  await board.ready;
  const settle = async (): Promise<void> => {
    await nextFrame();
    await resistor.updateComplete;
  };
  await settle();
  const root = resistor.shadowRoot!;
  const box = (name: string): HTMLInputElement =>
    root.querySelector<HTMLInputElement>(`input[part=${name}]`)!;
  const step = (by: 1 | -1): HTMLButtonElement =>
    [...root.querySelectorAll<HTMLButtonElement>('[part=step]')][by > 0 ? 1 : 0]!;
  const problem = (): string => root.querySelector('[part=problem]')!.textContent.trim();
  return { board, resistor, box, step, problem, settle };
}

async function perform({ box, step, settle }: Made, each: Act, last: number): Promise<void> {
  if (each.does === 'step') {
    step(each.by).click();
    return;
  }
  const input = box(each.does === 'slide' ? 'slider' : 'value');
  input.value = each.does === 'slide' ? `${Math.round(each.share * last)}` : each.text;
  for (const type of ['input', 'change']) {
    input.dispatchEvent(new Event(type, { bubbles: true, composed: type === 'input' }));
    await settle(); // between a key and the next there is time for a frame
  }
}

/** Ohms that a typed text means; undefined where it means none. */
function meant(text: string): number | undefined {
  const known: Readonly<Record<string, number>> = {
    '0.03 kΩ': 30,
    '1/3': 1 / 3,
    '17.4': 17.4,
    '−3': -3,
    '9e9': 9e9,
  };
  return known[text] ?? (/^-?\d+$/.test(text) ? Number(text) : undefined);
}

describe('a slider of ohms', () => {
  it('shows in its thumb, its box and its steps what the board has, whatever was done', async () => {
    await fc.assert(
      fc.asyncProperty(ranges, fc.array(act, { minLength: 1, maxLength: 8 }), async (range, acts) => {
        const { min, max, step, last } = range;
        const start = min + step * Math.floor(last / 2);
        const made = await make(`B1 6 V r 1 Ω + R1 [${min}..${max} step ${step}] ${start} Ω`);
        const { board, resistor, box, step: button, problem, settle } = made;
        const changes: number[] = [];
        resistor.addEventListener('rheolet-change', ({ detail }) => changes.push(detail.value));
        let ohms = start;
        /** Whether the box holds what could not be read: a step or a slide that does something ends that. */
        let refused = false;
        for (const each of acts) {
          const before = ohms;
          const heard = changes.length;
          await perform(made, each, last);
          await settle();
          const place = (value: number): number =>
            Math.min(Math.max(Math.round((value - min) / step), 0), last);
          if (each.does === 'slide') ohms = min + step * Math.round(each.share * last);
          if (each.does === 'step') ohms = min + step * Math.min(Math.max(place(ohms) + each.by, 0), last);
          const typed = each.does === 'type' ? meant(each.text) : undefined;
          const now = Number(board.solution?.resistance('R1') ?? NaN);
          // What is typed between two settings may be taken to either.
          if (typed !== undefined) {
            const clamped = Math.min(Math.max(typed, min), max);
            expect(Math.abs(now - clamped)).to.be.at.most(step / 2 + 1e-9);
            ohms = now;
          }
          const about = `${JSON.stringify(range)} ${JSON.stringify(each)} from ${before}`;
          expect(now, about).to.be.closeTo(ohms, 1e-9);
          expect(Number(box('slider').value), about).to.equal(place(ohms));
          const idle = each.does === 'step' && ohms === before;
          if (!idle) refused = each.does === 'type' && typed === undefined;
          if (!refused) expect(parseFloat(box('value').value), about).to.be.closeTo(ohms, 1e-6);
          const said = problem();
          const outside = typed !== undefined && (typed < min || typed > max);
          if (each.does === 'type' && each.text !== '1,000')
            expect(said !== '', `${about}: ${said}`).to.equal(refused || outside);
          expect(button(-1).disabled, about).to.equal(place(ohms) <= 0);
          expect(button(1).disabled, about).to.equal(place(ohms) >= last);
          if (changes.length > heard) expect(changes.at(-1), about).to.be.closeTo(ohms, 1e-9);
          else expect(ohms, `${about}: nobody is told`).to.equal(before);
        }
      }),
      { numRuns: 25, endOnFailure: true, includeErrorInReport: true },
    );
  });

  it('gives back its box when what could not be read is set by a step or by the slider', async () => {
    for (const other of [
      { does: 'step', by: 1 },
      { does: 'slide', share: 1 },
    ] as const) {
      const made = await make('B1 6 V + R1 [4..40 step 1] 12 Ω');
      await perform(made, { does: 'type', text: 'many' }, 36);
      expect(made.box('value').value).to.equal('many');
      expect(made.problem()).to.not.equal('');
      await perform(made, other, 36);
      await made.settle();
      expect(made.box('value').value.replace(/\s/g, ' ')).to.equal(other.does === 'step' ? '13 Ω' : '40 Ω');
      expect(made.problem()).to.equal('');
    }
  });
});
