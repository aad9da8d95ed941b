import type { Drawing, PlacedLabel } from '../../engine/core.ts';
import { put, shape } from './shape.ts';

/** The numbers that change, over the drawing: meters' readings and the values of what can be turned. */
export class DigitsLayer {
  readonly svg: SVGSVGElement = shape('svg', { class: 'digits', 'aria-hidden': 'true' });
  #texts: readonly { readonly id: string; readonly text: SVGTextElement }[] = [];

  /** Makes room for the numbers beside these components, and for those of the quantities that are written. */
  prepare({ width, height, labels }: Drawing, ids: ReadonlySet<string>): void {
    put(this.svg, 'viewBox', `0 0 ${width} ${height}`);
    const made = labels
      .filter(({ id, role }) => role === 'reading' || (role === 'value' && ids.has(id)))
      .map(numberAt);
    this.svg.replaceChildren(...made.map(({ text }) => text));
    this.#texts = made;
  }

  /** Writes the numbers, each only where it changes. */
  write(textOf: (id: string) => string): void {
    for (const { id, text } of this.#texts) {
      const now = textOf(id);
      if (text.textContent !== now) text.textContent = now;
    }
  }
}

function numberAt({ id, at, anchor }: PlacedLabel): { readonly id: string; readonly text: SVGTextElement } {
  const text = shape('text', { class: 'value', 'data-value': id, x: at.x, y: at.y, 'text-anchor': anchor });
  return { id, text };
}
