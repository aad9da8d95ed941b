import { html, nothing, type TemplateResult } from 'lit';
import { say } from '../../engine/core.ts';
import { readingOf, type ReadingStyle, type Snapshot } from '../link/index.ts';
import { lettersOf, styleOf } from './caption.ts';
import type { Undrawn } from './layout.ts';

/** A reading, and under it what it has done since it was held. */
function cell(snapshot: Snapshot, name: string, style: ReadingStyle = {}): TemplateResult {
  const change = snapshot.comparison?.changeOf(snapshot, name, style);
  return html`<td>
    ${readingOf(snapshot, name, style).text} ${change ? html`<small>${change.text}</small>` : nothing}
  </td>`;
}

/** The readings of a circuit, a row for each component; with what they have done since they were held. */
export function readingsTable(snapshot: Snapshot, label: string): TemplateResult {
  const { circuit, course } = snapshot;
  const letters = circuit.terminals ? ['R'] : ['V', 'I', 'R', 'P'];
  return html`<div class="scroll" tabindex="0" role="group" aria-label=${label}>
    <table part="table" lang="en">
      ${
        snapshot.comparison
          ? html`<caption>
              ${label}
            </caption>`
          : nothing
      }
      <thead>
        <tr>
          <th scope="col">${say({ code: 'component', data: {} })}</th>
          ${letters.map((letter) => html`<th scope="col"><var>${letter === 'V' ? course.letter : letter}</var></th>`)}
        </tr>
      </thead>
      <tbody>
        ${circuit.components.map(
          (component) =>
            html`<tr>
              <th scope="row">${component.id}</th>
              ${letters.map((letter) =>
                lettersOf(component).includes(letter)
                  ? cell(snapshot, `${letter}_${component.id}`, styleOf(component, letter))
                  : html`<td></td>`,
              )}
            </tr>`,
        )}
        ${
          circuit.terminals
            ? html`<tr>
                <th scope="row">${say({ code: 'total', data: {} })}</th>
                ${cell(snapshot, 'R_total')}
              </tr>`
            : nothing
        }
      </tbody>
    </table>
  </div>`;
}

/** What stands in place of a drawing: why there is none, and the readings. */
export const listed = (reason: Undrawn, snapshot: Snapshot, label: string): TemplateResult =>
  html`<p part="notes" lang="en" dir="ltr">${say({ code: 'not drawn', data: { reason } })}</p>
    ${readingsTable(snapshot, label)}`;
