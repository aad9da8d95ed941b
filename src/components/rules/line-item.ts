import { html, nothing, type TemplateResult } from 'lit';
import { say } from '../../engine/core.ts';
import { equation } from './equation.ts';
import type { Holding, Refusal } from './lines.ts';

/** How the numbers of a line are worked out: absent while these are the pupil's to find. */
export interface Working {
  readonly toggle: () => void;
  /** Where it is open. */
  readonly solution: TemplateResult | typeof nothing;
}

/** A rule at one place: for the eye as an equation, for the ear as a sentence. */
export function holdingItem(line: Holding, isCurrent: boolean, working?: Working): TemplateResult {
  const { key, why, symbols, numbers, rounded, spoken } = line;
  const verdict = say({ code: 'holds', data: { rounded } });
  return html`<li
    part="line"
    data-key=${key}
    tabindex=${isCurrent ? 0 : -1}
    aria-label="${why} ${spoken}: ${verdict}"
  >
    <p part="why">${why}</p>
    <p class="check">
      <span part="symbols" dir="ltr" aria-hidden="true">${equation(symbols)}</span>
      <span part="numbers" dir="ltr" aria-hidden="true">${numbers.length > 0 ? equation(numbers) : '?'}</span>
      <span class="heard">${`${spoken}: `}</span>
      <span part="verdict">${verdict}</span>
      ${
        working
          ? html`<button
              type="button"
              part="work"
              tabindex=${isCurrent ? 0 : -1}
              aria-expanded=${working.solution !== nothing}
              @click=${working.toggle}
            >
              ${say({ code: 'work it out', data: {} })}
            </button>`
          : nothing
      }
    </p>
    ${working?.solution ?? nothing}
  </li>`;
}

/** Rules that do not apply, and why. */
export function refusalItem({ key, rules, why }: Refusal, isCurrent: boolean): TemplateResult {
  return html`<li
    part="line"
    data-key=${key}
    tabindex=${isCurrent ? 0 : -1}
    aria-label=${[...rules, why].join(' ')}
  >
    ${rules.map((rule) => html`<p>${rule}</p>`)}
    <p part="why">${why}</p>
  </li>`;
}
