import { html, type TemplateResult } from 'lit';
import { quantity, settingAt, solve, writeQuantity, writeReading, type Unit } from '../../engine/core.ts';
import { say } from '../../engine/reasons/index.ts';
import type { Axis } from '../axis/index.ts';
import { figuresOf, type Snapshot } from '../link/index.ts';
import { circuitAt, type Curve } from './curves.ts';
import { lettered } from './names.ts';
import { lastOf, settingNear } from './points.ts';
import type { Turned } from './turned.ts';

/** The values of a graph, at its ends and near the marks of its axis. */
export interface Sheet {
  /** The names of the quantities and their units: `R_R1`, "Ω". */
  readonly heads: readonly { readonly name: string; readonly unit: string }[];
  /** Numbers without their units, "—" where there is none. */
  readonly rows: readonly (readonly string[])[];
}

/** Works out the values of a graph at settings that its slider has. */
export function sheetOf(
  snapshot: Snapshot,
  turned: Turned,
  curves: readonly Curve[],
  along: Axis,
  up: Axis,
  unit: Unit,
): Sheet {
  const { circuit, course } = snapshot;
  const figures = figuresOf(snapshot);
  const inside = along.marks.map(({ value }) => settingNear(turned, value));
  const settings = [...new Set([0, ...inside, lastOf(turned)])].sort((a, b) => a - b);
  const { unit: own } = turned.now;
  const rows = settings.map((setting) => {
    const value = settingAt(turned.range, setting);
    const solution = solve(circuitAt(turned.alone ?? circuit, turned, value));
    const cells = curves.map(({ name, sign }) => {
      const read = solution.quantity(name);
      const style = { figures, prefix: up.prefix, decimalSign: course.decimalSign };
      return read === undefined ? '—' : writeReading(read * sign, unit, style).number;
    });
    return [writeQuantity(quantity(value, own, along.prefix), course.decimalSign).number, ...cells];
  });
  const heads = [
    { name: lettered(turned.name, course), unit: along.prefix + own },
    ...curves.map(({ name }) => ({ name: lettered(name, course), unit: up.prefix + unit })),
  ];
  return { heads, rows };
}

/** The same as the rows of a text. */
export const rowsOf = ({ heads, rows }: Sheet): readonly (readonly string[])[] => [
  heads.map(({ name, unit }) => `${name} / ${unit}`),
  ...rows,
];

/** A name as textbooks write it. */
export function nameView(name: string): TemplateResult {
  const [letter = '', ...of] = name.split('_');
  return of.length > 0 ? html`<var>${letter}</var><sub>${of.join('_')}</sub>` : html`${letter}`;
}

/** The table, under a summary that opens it. */
export function sheetView({ heads, rows }: Sheet, name: string, out: TemplateResult): TemplateResult {
  return html`<details part="values" lang="en">
    <summary>${say({ code: 'graph values', data: {} })}</summary>
    <div class="scroll" role="group" tabindex="0" aria-label=${name}>
      <table part="table">
        <thead>
          <tr>
            ${heads.map((head) => html`<th scope="col">${nameView(head.name)} / ${head.unit}</th>`)}
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
    </div>
    <div class="buttons">${out}</div>
  </details>`;
}
