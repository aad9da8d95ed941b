import { html, nothing, type TemplateResult } from 'lit';
import { Fraction, isOwn, writeReading, type Term } from '../../engine/core.ts';
import { agreement } from '../../engine/mark/index.ts';
import { say } from '../../engine/reasons/index.ts';
import { figuresOf, unitOf, type Snapshot } from '../link/index.ts';
import { equation } from './equation.ts';
import type { Holding } from './lines.ts';

/** A quantity that a pupil is to predict, and what the board has. */
export interface Predicted {
  readonly name: string;
  readonly value: Fraction;
  readonly text: string;
  readonly unit: string;
}

/** What a circuit states of its components is no matter of prediction, nor what is hidden of them. */
const isOpen = ({ circuit }: Snapshot, { name, hidden }: Term): boolean =>
  !hidden && !circuit.components.some((component) => isOwn(component, name));

/** The quantities of some lines, none twice. */
export function predictedOf(snapshot: Snapshot, lines: readonly Holding[]): readonly Predicted[] {
  const terms = lines.flatMap((line) => line.terms.filter((term) => isOpen(snapshot, term)));
  const byName = new Map(terms.map((term) => [term.name, term]));
  return [...byName.values()].map(({ name, value }) => {
    const exact = new Fraction(value).abs();
    const { decimalSign } = snapshot.course;
    const writing = { figures: figuresOf(snapshot), decimalSign };
    const { text, unit } = writeReading(exact, unitOf(name), writing);
    return { name, value: exact, text, unit };
  });
}

/** Whether a prediction rounds to what the board has. */
export const isRight = (typed: string, one: Predicted): boolean => agreement(typed, one) === undefined;

/** What the pupil has written, and whether that is compared with the board. */
export interface Predictions {
  readonly typed: ReadonlyMap<string, string>;
  readonly revealed: boolean;
  readonly write: (name: string, text: string) => void;
}

function row({ course }: Snapshot, one: Predicted, { typed, revealed, write }: Predictions): TemplateResult {
  const [letter = '', subscript = ''] = one.name.replace(/^V/, course.letter).split(/_(.*)/);
  const text = typed.get(one.name) ?? '';
  const name = say({ code: 'quantity', data: { letter, of: subscript, wording: course.wording } });
  const input = ({ target }: Event): void => {
    if (target instanceof HTMLInputElement) write(one.name, target.value);
  };
  const symbol = equation([
    { kind: 'symbol', letter, subscript: subscript.replace(/[()]/g, ''), over: false },
  ]);
  return html`<tr>
    <th scope="row"><span aria-hidden="true">${symbol}</span><span class="heard">${name}</span></th>
    <td>
      <input
        part="prediction"
        dir="ltr"
        inputmode="decimal"
        autocomplete="off"
        size="6"
        .value=${text}
        ?readonly=${revealed}
        aria-label=${say({ code: 'gap', data: { of: name, unit: one.unit } })}
        @input=${input}
      />
      ${one.unit}
    </td>
    <td>
      ${revealed ? one.text : nothing}
      ${
        revealed && text.trim()
          ? html`<small>${say({ code: 'prediction verdict', data: { right: isRight(text, one) } })}</small>`
          : nothing
      }
    </td>
  </tr>`;
}

/** A rule as a table: its quantities, what the pupil predicts, and what the board has. */
export function predictionTable(
  snapshot: Snapshot,
  lines: readonly Holding[],
  predictions: Predictions,
): TemplateResult | typeof nothing {
  const all = predictedOf(snapshot, lines);
  if (all.length === 0) return nothing;
  const columns = ['quantity', 'predicted', 'shown'] as const;
  return html`<table part="predictions">
    <thead>
      <tr>
        ${columns.map((column) => html`<th scope="col">${say({ code: 'prediction heading', data: { column } })}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${all.map((one) => row(snapshot, one, predictions))}
    </tbody>
  </table>`;
}

/** The button that compares, and takes back; it compares as soon as something is predicted. */
export const compareButton = ({ typed, revealed }: Predictions, act: () => void): TemplateResult =>
  html`<button
    type="button"
    part="compare"
    ?disabled=${!revealed && ![...typed.values()].some((text) => text.trim())}
    @click=${act}
  >
    ${say({ code: 'prediction button', data: { does: revealed ? 'again' : 'reveal' } })}
  </button>`;
