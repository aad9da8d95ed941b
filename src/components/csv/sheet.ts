import { html, type TemplateResult } from 'lit';
import { partsOf } from '../link/index.ts';

/** Values of a drawing as a table. */
export interface Sheet {
  /** The names of the columns, `R_R1` or a word, and their units; '' where there is none. */
  readonly heads: readonly { readonly name: string; readonly unit: string }[];
  /** Numbers without their units, "—" where there is none. */
  readonly rows: readonly (readonly string[])[];
}

/** The same as the rows of a text. */
export const rowsOf = ({ heads, rows }: Sheet): readonly (readonly string[])[] => [
  heads.map(({ name, unit }) => (unit ? `${name} / ${unit}` : name)),
  ...rows,
];

/** A name as textbooks write it. */
export function nameView(name: string): TemplateResult {
  const { letter, of } = partsOf(name);
  return of ? html`<var>${letter}</var><sub>${of}</sub>` : html`${letter}`;
}

/** The table, which scrolls in a box of its own; `label` is its name, for those who hear it. */
export function sheetView({ heads, rows }: Sheet, label: string): TemplateResult {
  return html`<div class="scroll" role="group" tabindex="0" aria-label=${label}>
    <table part="table">
      <thead>
        <tr>
          ${heads.map(({ name, unit }) => html`<th scope="col">${nameView(name)}${unit && ` / ${unit}`}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          ([first, ...cells]) =>
            html`<tr>
              <th scope="row">${first}</th>
              ${cells.map((cell) => html`<td>${cell}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
