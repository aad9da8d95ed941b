import type { Drawing, PlacedLabel } from '../../engine/core.ts';
import { put, shape } from './shape.ts';

interface Placed {
  readonly id: string;
  readonly element: SVGTextElement;
  /** Its one node stays, so that new digits are laid out without a new style. */
  readonly digits: Text;
}

/** The numbers that change, over the drawing: meters' readings and the values of what can be turned. */
export class DigitsLayer {
  readonly svg: SVGSVGElement = shape('svg', { class: 'digits', 'aria-hidden': 'true' });
  #placed: readonly Placed[] = [];

  /** Makes room for the numbers beside these components, and for those of the quantities that are written. */
  prepare({ width, height, labels }: Drawing, ids: ReadonlySet<string>): void {
    put(this.svg, 'viewBox', `0 0 ${width} ${height}`);
    this.#placed = labels
      .filter(({ id, role }) => role === 'reading' || (role === 'value' && ids.has(id)))
      .map(numberAt);
    this.svg.replaceChildren(...this.#placed.map(({ element }) => element));
  }

  /** Writes the numbers, each only where it changes. */
  write(textOf: (id: string) => string): void {
    for (const { id, digits } of this.#placed) {
      const now = textOf(id);
      if (digits.data !== now) digits.data = now;
    }
  }
}

function numberAt({ id, at, anchor }: PlacedLabel): Placed {
  const digits = new Text();
  const place = { class: 'value', 'data-value': id, x: at.x, y: at.y, 'text-anchor': anchor };
  return { id, element: shape('text', place, digits), digits };
}
