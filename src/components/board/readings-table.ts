import { html, nothing, type TemplateResult } from 'lit';
import { say } from '../../engine/core.ts';
import { readingOf, type Snapshot } from '../link/index.ts';

/** The readings of a circuit that is not drawn, a row for each component. */
export function readingsTable(snapshot: Snapshot, label: string): TemplateResult {
  const { circuit, course } = snapshot;
  const letters = circuit.terminals ? ['R'] : ['V', 'I', 'R', 'P'];
  return html`<div class="scroll" tabindex="0" role="group" aria-label=${label}>
    <table part="table" lang="en">
      <thead>
        <tr>
          <th scope="col">${say({ code: 'component', data: {} })}</th>
          ${letters.map((letter) => html`<th scope="col"><var>${letter === 'V' ? course.letter : letter}</var></th>`)}
        </tr>
      </thead>
      <tbody>
        ${circuit.components.map(
          ({ id, hidden }) =>
            html`<tr>
              <th scope="row">${id}</th>
              ${letters.map(
                (letter) =>
                  html`<td>
                    ${letter === 'R' && hidden ? '?' : readingOf(snapshot, `${letter}_${id}`).text}
                  </td>`,
              )}
            </tr>`,
        )}
        ${
          circuit.terminals
            ? html`<tr>
                <th scope="row">${say({ code: 'total', data: {} })}</th>
                <td>${readingOf(snapshot, 'R_total').text}</td>
              </tr>`
            : nothing
        }
      </tbody>
    </table>
  </div>`;
}
