import { html, nothing, svg, type TemplateResult } from 'lit';
import {
  type Component,
  type Condition,
  conditions,
  feltBy,
  isResistor,
  isSecondTwin,
  isSupply,
  isSwitch,
  say,
  writeReading,
} from '../../engine/core.ts';
import type { Snapshot } from '../link/index.ts';
import { caption } from './caption.ts';
import type { Menu } from './menu.ts';
import { notes } from './notes.ts';
import { readingsTable } from './readings-table.ts';
import type { Word } from './shown.ts';
import type { BoardState } from './state.ts';

/** What a button of a board does. */
export type Act = 'reset' | 'undo' | 'redo' | 'hold' | 'release' | 'reveal';

/** What the part of a board under its drawing shows, and whom it tells what the pupil does. */
export interface View {
  readonly snapshot: Snapshot;
  readonly state: BoardState;
  readonly shown: ReadonlySet<Word>;
  /** Whether there is a drawing, and not a table. */
  readonly drawn: boolean;
  /** The component that is pointed at or focused. */
  readonly pointed: Component | undefined;
  /** The component that was clicked or focused last. */
  readonly chosen: Component | undefined;
  /** Pixels for an ampere. */
  readonly perAmpere: number;
  /** Why what the address says of the board, and what the page wants written, cannot be used; '' where they can. */
  readonly misread: readonly string[];
  readonly menu: Menu;
  readonly act: (act: Act) => void;
  readonly toggle: (id: string) => void;
  readonly alter: (id: string, condition: Condition) => void;
  /** Nothing is to be chosen any more. */
  readonly leave: () => void;
}

/** A ribbon of a round current, so that widths can be read. */
function ribbonKey({ perAmpere, snapshot, shown }: View): TemplateResult | typeof nothing {
  if (!shown.has('ribbons') || snapshot.readings.status === 'faulty' || !perAmpere) return nothing;
  const power = 10 ** Math.floor(Math.log10(12 / perAmpere));
  const round = [5, 2, 1].map((digit) => digit * power).find((current) => current * perAmpere <= 12) ?? power;
  const height = round * perAmpere;
  const current = writeReading(round, 'A', { figures: 1, decimalSign: snapshot.course.decimalSign }).text;
  return html`<span part="key" aria-hidden="true">
    <svg width="24" height="14">
      ${svg`<rect class="ribbons" y=${7 - height / 2} width="24" height=${height}></rect>`}
    </svg>
    ${say({ code: 'ribbon key', data: { current } })}
  </span>`;
}

/** Buttons that take the chosen component out, or put a wire across it. */
function alterations({ chosen, shown, alter, leave }: View): TemplateResult | typeof nothing {
  if (!chosen || !shown.has('conditions')) return nothing;
  const { id, condition } = chosen;
  const escape = ({ key }: KeyboardEvent): void => {
    if (key === 'Escape') leave();
  };
  return html`<span class="alter" @keydown=${escape}
    >${conditions.map(
      (each) =>
        html`<button
          type="button"
          part="act"
          aria-pressed=${condition === each}
          @click=${() => alter(id, each)}
        >
          ${say({ code: 'alter', data: { id, condition: each } })}
        </button>`,
    )}</span
  >`;
}

function controls({ snapshot, shown, toggle }: View): TemplateResult | typeof nothing {
  if (!shown.has('sliders')) return nothing;
  return html`${snapshot.circuit.components.map((component) => {
    const { id } = component;
    if (isSecondTwin(component)) return nothing;
    if (isResistor(component) && component.range) return html`<rheolet-resistor of=${id}></rheolet-resistor>`;
    if (isSupply(component) && (component.range ?? ('internalRange' in component && component.internalRange)))
      return html`<rheolet-supply of=${id}></rheolet-supply>`;
    if (!isSwitch(component)) return nothing;
    const state = say({ code: 'switch state', data: { closed: component.closed } });
    return html`<button
      type="button"
      part="switch"
      aria-pressed=${component.closed}
      @click=${() => toggle(id)}
    >
      ${`${id}: ${state}`}
    </button>`;
  })}${feltBy(snapshot.circuit).length > 0 ? html`<rheolet-surroundings></rheolet-surroundings>` : nothing}`;
}

function acts({ snapshot, state, shown, menu, act }: View): TemplateResult {
  const button = (does: Act, possible = true): TemplateResult =>
    html`<button type="button" part="act" ?disabled=${!possible} @click=${() => act(does)}>
      ${say({ code: 'button', data: { does } })}
    </button>`;
  const { circuit } = snapshot;
  const settable =
    feltBy(circuit).length > 0 ||
    circuit.components.some((each) => isSwitch(each) || 'range' in each || 'internalRange' in each);
  return html`<span class="acts">
    ${
      settable || state.past.length + state.future.length > 0
        ? [
            button('reset', Object.keys(state.settings).length > 0),
            button('undo', state.past.length > 0),
            button('redo', state.future.length > 0),
            snapshot.covered ? nothing : [button('hold'), snapshot.held ? button('release') : nothing],
          ]
        : nothing
    }
    ${snapshot.covered ? button('reveal') : nothing} ${shown.has('menu') ? menu.button() : nothing}
  </span>`;
}

/** All that stands under the drawing: caption, sliders and switches, buttons, and what is to be said of the circuit. */
export function view(all: View): TemplateResult {
  const { snapshot, shown, pointed, drawn, misread } = all;
  const told = [...misread, ...notes(snapshot)].filter(Boolean);
  return html`${
      drawn
        ? html`<div class="strip" lang="en" dir="ltr">
            <div part="caption">${caption(pointed, snapshot)}</div>
            ${alterations(all)} ${ribbonKey(all)}
          </div>`
        : nothing
    }
    ${
      drawn && snapshot.comparison && !snapshot.covered
        ? readingsTable(snapshot, say({ code: 'compared', data: {} }))
        : nothing
    }
    <div part="controls" lang="en">${controls(all)}</div>
    <div class="foot" lang="en">
      ${acts(all)}
      <div part="notes" dir="ltr">${told.map((note) => html`<p>${note}</p>`)}</div>
    </div>
    ${shown.has('menu') ? all.menu.panel(snapshot.circuit, drawn) : nothing}
    ${shown.has('rules') ? html`<rheolet-rules></rheolet-rules>` : nothing}`;
}
