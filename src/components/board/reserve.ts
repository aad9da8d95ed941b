import type { Size } from '../../engine/core.ts';
import { put, shape } from './shape.ts';

/** The room that a board out of sight keeps until it is drawn. */
export class Reserve {
  readonly element: SVGSVGElement = shape('svg', { class: 'reserve' });

  /** As large as a drawing, with so many pixels below for what will stand round it. */
  size({ width, height }: Size, rest: number): void {
    put(this.element, 'viewBox', `0 0 ${width} ${height}`);
    put(this.element, 'width', `${width}`);
    put(this.element, 'height', `${height}`);
    this.element.style.setProperty('padding-block-end', `${rest}px`);
  }
}
