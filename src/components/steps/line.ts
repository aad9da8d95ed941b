import { html, nothing, type TemplateResult } from 'lit';
import { heard, type Step } from '../../engine/explain/index.ts';
import { say } from '../../engine/reasons/index.ts';
import type { Course } from '../../engine/core.ts';
import { formula } from './formula.ts';

/** The rungs of each step: where to look, which rule, which equation, the equation with numbers, the number. */
export const rungs = 5;

/** How the steps are shown. */
export type Mode = 'steps' | 'whole' | 'hints' | 'gaps';

/** What a step is shown with. */
export interface Shown {
  readonly mode: Mode;
  readonly course: Pick<Course, 'letter' | 'wording'>;
  /** How many of its rungs are uncovered; the others are there for paper only. */
  readonly rungs: number;
  /** Whether it gives what is asked. */
  readonly isLast: boolean;
  /** Where its number is filled in. */
  readonly gap: TemplateResult | typeof nothing;
}

/** An equation for the eye and for the ear. */
export const equation = (
  text: string,
  course: Shown['course'],
  words: string = heard(text, course),
): TemplateResult =>
  html`<span dir="ltr" aria-hidden="true">${formula(text)}</span><span class="heard">${words}</span>`;

/** What the equation of a step is called. */
export const numberOf = ({ gives }: Step): string =>
  say({ code: 'equation number', data: { number: gives } });

/** The names in a sentence are set as in the equations, in the letters of the course. */
export function sentence(text: string, { letter }: Pick<Course, 'letter'>): readonly unknown[] {
  const pieces = text.replace(/\bV(?=r?_)/g, letter).split(/(\p{L}+_[\p{L}\d_]+)/u);
  return pieces.map((piece, place) => (place % 2 > 0 ? formula(piece) : piece));
}

/** Whether the equation with numbers says nothing that is not said before it or after it: the same current, what a junction says. */
export const repeats = (step: Step, { letter }: Pick<Course, 'letter'>): boolean =>
  [step.rearranged, `${step.gives.replace(/^V/, letter)} = ${step.text}`].includes(step.substituted);

/** The rungs of a step, those that are still covered too. */
export function lines(step: Step, { mode, course, rungs, isLast, gap }: Shown): TemplateResult {
  const later = (rung: number): string => (rungs > rung ? '' : 'later');
  const { notes = [], unknowns } = step;
  const name = step.gives.replace(/^V/, course.letter);
  const value = `${name} = ${step.text}`;
  const follows = step.substituted.startsWith(`${name} = `);
  const number = unknowns
    ? equation(step.gives, course, numberOf(step))
    : gap === nothing
      ? html`<span part=${isLast ? 'value answer' : 'value'}
          >${equation(follows ? `= ${step.text}` : value, course)}</span
        >`
      : html`${equation(follows ? '=' : `${name} =`, course)} ${gap}`;
  // An equation that is itself the result stands there alone; a hint has it first.
  const written = [...new Set([step.equation, step.rearranged])];
  const symbols = written.filter((text) => mode === 'hints' || text !== step.substituted);
  const first = step.substituted === value ? equation(name, course) : equation(step.substituted, course);
  return html`${
      mode === 'hints'
        ? html`<p part="look" class=${later(0)}>${say({ code: 'look at', data: { ids: step.about } })}</p>`
        : nothing
    }
    ${notes.map((note) => html`<p part="note" class=${later(note.code === 'flows the other way' ? 4 : 0)}>${sentence(say(note), course)}</p>`)}
    <p part="why" class=${later(1)}>${sentence(say(step.why), course)}</p>
    ${
      symbols.length > 0
        ? html`<p part="symbols" class=${later(2)}>
            ${symbols.map((text) => html`<span class="one">${equation(text, course)}</span>`)}
          </p>`
        : nothing
    }
    <p part="numbers" class=${later(repeats(step, course) && gap === nothing ? 4 : 3)}>
      <span class=${follows ? '' : 'one'}>${first}</span>
      <span class=${later(gap === nothing ? 4 : 3)}>${number}</span>
    </p>`;
}
