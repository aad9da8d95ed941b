import { html, nothing, type TemplateResult } from 'lit';
import { thinSpace, type Course } from '../../engine/core.ts';
import { heard, type Step } from '../../engine/explain/index.ts';
import { agreement } from '../../engine/mark/index.ts';
import { say, type GapMistake } from '../../engine/reasons/index.ts';

/** What was typed into the gap that is open now. */
export interface Typed {
  readonly typed: string;
  readonly mistake: GapMistake | undefined;
  /** Whether this is the gap; the later ones are there for paper only. */
  readonly isNow: boolean;
}

/** What is wrong with a number that was filled in; undefined where it is right. */
export const mistakeIn = (typed: string, step: Step): GapMistake | undefined => agreement(typed, step);

/** A box for the number that a step gives, its unit, and what is wrong with what was filled in. */
export function gap(
  step: Step,
  course: Course,
  { typed, mistake, isNow }: Typed,
  fill: (typed: string) => void,
): TemplateResult {
  const [, unit = ''] = step.text.split(thinSpace);
  const of = heard(step.gives, course);
  const box = (event: Event): void => {
    if (event.target instanceof HTMLInputElement) fill(event.target.value);
  };
  return html`<input
      part="gap"
      dir="ltr"
      inputmode="decimal"
      autocomplete="off"
      size="7"
      .value=${isNow ? typed : ''}
      aria-label=${say({ code: 'gap', data: { of, unit } })}
      aria-invalid=${isNow && mistake ? 'true' : nothing}
      aria-describedby=${isNow && mistake ? 'mistake' : nothing}
      @change=${box}
    />${thinSpace}${unit}${
      isNow && mistake
        ? html`<span part="mistake" id="mistake">${say({ code: 'gap mistake', data: { mistake } })}</span>`
        : nothing
    }`;
}
