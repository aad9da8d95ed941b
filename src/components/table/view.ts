import { html, nothing, type TemplateResult } from 'lit';
import { say, type Course } from '../../engine/core.ts';
import { calledQuantity } from '../link/index.ts';
import type { Grid, Heading } from './grid.ts';
import type { Texts } from './texts.ts';

/** What is drawn of a table besides its cells, and what its controls do. */
export interface Doing {
  readonly grid: Grid;
  readonly label: string;
  readonly course: Course;
  readonly typed: Texts;
  readonly disabled: boolean;
  readonly type: (name: string, text: string) => void;
  readonly settle: () => void;
  /** The pupil points at a row, or leaves it (''). */
  readonly point: (head: string) => void;
  /** Takes a row away; undefined where rows stay. */
  readonly remove: ((place: number) => void) | undefined;
}

const heading = (each: Heading): TemplateResult =>
  html`<th scope="col">
    <var>${each.letter}</var>${each.of && html`<sub>${each.of}</sub>`} / ${each.unit}
  </th>`;

function box(name: string, { typed, disabled, course, type, settle }: Doing): TemplateResult {
  return html`<input
    part="blank"
    inputmode="decimal"
    autocomplete="off"
    spellcheck="false"
    aria-label=${calledQuantity(name, course)}
    .value=${typed[name] ?? ''}
    ?disabled=${disabled}
    @input=${({ target }: Event) => target instanceof HTMLInputElement && type(name, target.value)}
    @change=${settle}
  />`;
}

/** A table as an exam paper has it. */
export function tableView(doing: Doing): TemplateResult {
  const { grid, label, disabled, point, remove } = doing;
  const removing = (place: number): TemplateResult =>
    html`<td class="act">
      <button
        type="button"
        part="delete"
        aria-label=${say({ code: 'delete row', data: { row: place + 1 } })}
        ?disabled=${disabled}
        @click=${() => remove?.(place)}
      >
        ×
      </button>
    </td>`;
  const name = label || say({ code: 'readings', data: {} });
  return html`<div class="scroll" role="group" tabindex="0" lang=${label ? nothing : 'en'} aria-label=${name}>
    <table part="table">
      ${
        label &&
        html`<caption part="caption">
          ${label}
        </caption>`
      }
      <thead lang="en">
        <tr>
          <th scope="col">${grid.corner}</th>
          ${grid.headings.map(heading)}
        </tr>
      </thead>
      <tbody lang="en">
        ${grid.rows.map(
          ({ head, cells }, place) =>
            html`<tr
              @pointerenter=${() => point(head)}
              @pointerleave=${() => point('')}
              @focusin=${() => point(head)}
              @focusout=${() => point('')}
            >
              <th scope="row">${head}</th>
              ${cells.map(
                ({ name: of, text, change }) =>
                  html`<td>
                    ${text ?? box(of, doing)}${change ? html`<small part="change">${change}</small>` : nothing}
                  </td>`,
              )}
              ${remove ? removing(place) : nothing}
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
