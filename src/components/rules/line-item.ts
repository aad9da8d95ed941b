import { html, nothing, type TemplateResult } from 'lit';
import { say } from '../../engine/index.ts';
import { equation } from './equation.ts';
import type { Line } from './lines.ts';

/** One rule at one place: for the eye as an equation, for the ear as a sentence. */
export function lineItem(line: Line, isCurrent: boolean): TemplateResult {
  const { key, rule, why, symbols, numbers, rounded, spoken, check } = line;
  const holds = check.status === 'holds';
  const verdict = holds ? say({ code: 'holds', data: { rounded } }) : '';
  const heard = holds ? `${spoken}: ` : '';
  return html`<li
    part="line"
    data-key=${key}
    tabindex=${isCurrent ? 0 : -1}
    aria-label=${holds ? `${why} ${heard}${verdict}` : `${rule} ${why}`}
  >
    ${holds ? nothing : html`<p>${rule}</p>`}
    <p part="why">${why}</p>
    ${
      holds
        ? html`<p class="check">
            <span part="symbols" dir="ltr" aria-hidden="true">${equation(symbols)}</span>
            <span part="numbers" dir="ltr" aria-hidden="true"
              >${numbers.length > 0 ? equation(numbers) : '?'}</span
            >
            <span class="heard">${heard}</span>
            <span part="verdict">${verdict}</span>
          </p>`
        : nothing
    }
  </li>`;
}
