import { fixture, html, nextFrame } from '@open-wc/testing';
import '../../../src/components/board/define.ts';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import { RheoletResistor } from '../../../src/components/resistor/index.ts';
import { eventually } from '../eventually.ts';

/** The quay lights: a fog-lamp control beside a lamp with its ammeter, and an ammeter before both. */
export const quayLine = 'B1 6 V + A1 + (R1 [4..40] 12 Ω ∥ (A2 + L1 8 Ω))';
/** A switch, a control and a lamp, one after the other, and a voltmeter. */
export const pumpLine = 'B1 6 V + S1 closed + R1 [4..40] 12 Ω + L1 8 Ω; V1 across L1';

/** A board on a bench: it is handled as a pupil handles it, and read as a pupil reads it. */
export class Bench {
  readonly board: RheoletBoard;
  constructor(board: RheoletBoard) {
    this.board = board;
  }

  find(selector: string): Element {
    const found = this.board.shadowRoot?.querySelector(selector);
    if (!found) throw new Error(`no ${selector}`);
    return found;
  }
  all(selector: string): Element[] {
    return [...(this.board.shadowRoot?.querySelectorAll(selector) ?? [])];
  }
  get path(): SVGPathElement {
    return kind(this.find('.moving .ribbons'), SVGPathElement);
  }
  get resistor(): RheoletResistor {
    return kind(this.find('rheolet-resistor'), RheoletResistor);
  }
  get ribbons(): string {
    return this.find('.moving .ribbons').getAttribute('d') ?? '';
  }
  /** The numbers over the drawing, by id. */
  digits(id: string): string {
    return this.find(`.digits [data-value="${id}"]`).textContent.replace(/\s/g, ' ');
  }
  get caption(): string {
    return text(this.find('[part=caption]'));
  }
  get notes(): string {
    return text(this.find('[part=notes]'));
  }
  component(id: string): SVGGElement {
    return kind(this.find(`[data-id="${id}"]`), SVGGElement);
  }
  button(label: string): HTMLButtonElement {
    const found = this.all('button').find((button) => text(button).startsWith(label));
    if (!(found instanceof HTMLButtonElement)) throw new Error(`no button ${label}`);
    return found;
  }
  get slider(): HTMLInputElement {
    return sliderOf(this.resistor);
  }
  /** All digits and rules have had their frame. */
  async settled(): Promise<void> {
    await nextFrame();
    await nextFrame();
    await this.board.updateComplete;
  }
}

function kind<E extends Element>(found: Element, type: abstract new () => E): E {
  if (found instanceof type) return found;
  throw new Error(`${found.localName} is of another kind`);
}

/** The slider inside a resistor. */
export function sliderOf(resistor: RheoletResistor): HTMLInputElement {
  const slider = resistor.shadowRoot?.querySelector<HTMLInputElement>('[part=slider]');
  if (!slider) throw new Error('no slider');
  return slider;
}

/** Waits until what compares with the held readings has come. */
export async function comparing({ board }: Bench): Promise<void> {
  await eventually(() => board.snapshot?.comparison, 'the comparison comes');
}

/** What an element shows, blanks made one. */
export const text = (element: Element): string => element.textContent.replace(/\s+/g, ' ').trim();

/** Drags a slider to a setting, and lets go of it or not. */
export function drag(slider: HTMLInputElement, setting: number, letGo: boolean): void {
  slider.value = String(setting);
  slider.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
  if (letGo) slider.dispatchEvent(new Event('change', { bubbles: true }));
}

/** A board with a circuit, drawn. */
export async function boardWith(
  circuit: string,
  attributes: Readonly<Record<string, string>> = {},
): Promise<Bench> {
  const board = await fixture<RheoletBoard>(html`<rheolet-board></rheolet-board>`);
  for (const [name, value] of Object.entries(attributes)) board.setAttribute(name, value);
  board.setAttribute('circuit', circuit);
  await board.ready;
  const bench = new Bench(board);
  await bench.settled();
  return bench;
}
