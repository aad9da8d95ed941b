import {
  LitElement,
  css,
  html,
  nothing,
  svg,
  type CSSResult,
  type PropertyDeclarations,
  type TemplateResult,
} from 'lit';
import {
  dotsOf,
  drawSchematic,
  lineOf,
  parseCircuit,
  track,
  type Drawing,
  type PlacedSymbol,
  type RibbonRun,
  type Tracker,
} from '../../../src/engine/index.ts';

const pixelsPerAmpere = 10;
/** The room that a board has in a column of the page; asked of the page, it would cost a layout for each board. */
const room = 296;

/**
 * The same drawing as a board's, done plainly: one Lit template with everything in it, rendered again at every change.
 * It is what the board is compared with; it has no keys, no words and no sliders.
 */
export class PlainBoard extends LitElement {
  static override styles: CSSResult = css`
    :host {
      display: block;
    }
  `;
  static override properties: PropertyDeclarations = { circuit: { type: String } };
  declare circuit: string;
  #drawing: Drawing | undefined;
  #tracker: Tracker | undefined;
  #ids: readonly string[] = [];
  #currents = new Float64Array();

  override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has('circuit')) return;
    const circuit = parseCircuit(this.circuit);
    const drawing = drawSchematic(circuit, { width: room });
    if (drawing.kind === 'drawing') this.#drawing = drawing;
    this.#ids = circuit.components.map(({ id }) => id);
    this.#currents = new Float64Array(this.#ids.length);
    this.#tracker = track(
      circuit,
      'R1',
      this.#ids.map((id) => `I_${id}`),
    );
    this.#tracker.at(12, this.#currents);
  }

  /** Shows another value of the slider. */
  move(ohms: number): void {
    this.#tracker?.at(ohms, this.#currents);
    this.requestUpdate();
  }

  #currentOf(id: string): number {
    return this.#currents[this.#ids.indexOf(id)] ?? 0;
  }

  #symbol({ id, at, path, filled, letter }: PlacedSymbol): TemplateResult {
    return svg`<g data-id=${id} transform="translate(${at.x} ${at.y})"><path d=${path} /><path
      d=${filled} fill="currentColor" /><text y="5" text-anchor="middle">${letter}</text></g>`;
  }

  #ribbon({ carries, points, arrows }: RibbonRun): TemplateResult {
    const sum = carries.reduce((total, { id, sign }) => total + sign * this.#currentOf(id), 0);
    const width = Math.abs(sum) * pixelsPerAmpere;
    const heads = arrows.map(
      ({ at, turn }) => svg`<path d="M6 0L-6 8V-8Z" fill="plum"
        transform="translate(${at.x} ${at.y}) rotate(${sum < 0 ? turn + 180 : turn}) scale(${1 + width / 20})" />`,
    );
    return svg`<path d=${lineOf(points)} fill="none" stroke="plum" stroke-width=${width} />${heads}`;
  }

  override render(): TemplateResult | typeof nothing {
    if (!this.#drawing) return nothing;
    const { width, height, ribbons, wires, symbols, labels } = this.#drawing;
    return html`<svg
        viewBox="0 0 ${width} ${height}"
        width=${width}
        height=${height}
        fill="none"
        stroke="black"
      >
        ${ribbons.map((run) => this.#ribbon(run))}
        ${wires.map(({ lines, dots }) => svg`<path d=${lines.map((line) => lineOf(line)).join('')} /><path d=${dotsOf(dots)} />`)}
        ${symbols.map((symbol) => this.#symbol(symbol))}
        ${labels.map(({ at, anchor, text }) => svg`<text x=${at.x} y=${at.y} text-anchor=${anchor}>${text}</text>`)}
      </svg>
      <p>
        ${['A1', 'A2', 'R1', 'L1'].map((id) => html`<span>${id} ${this.#currentOf(id).toPrecision(3)} A</span> `)}
      </p>`;
  }
}

customElements.define('plain-board', PlainBoard);
