import { prepareRibbons, type Drawing, type Ribbons } from '../../engine/index.ts';
import { put, shape } from './shape.ts';
import type { Word } from './shown.ts';

/** What moves while a slider moves: all ribbons as one path, and the glow of the lamps, under the still drawing. */
export class MovingLayer {
  readonly svg: SVGSVGElement = shape('svg', { class: 'moving', 'aria-hidden': 'true' });
  readonly #path = shape('path', { class: 'ribbons' });
  #ribbons: Ribbons | undefined;
  #glows: readonly { readonly id: string; readonly disc: SVGElement }[] = [];

  /** Prepares for a drawing; `ids` is the order in which currents come, `lamps` are those that glow. */
  prepare(
    drawing: Drawing,
    ids: readonly string[],
    lamps: readonly string[],
    shown: ReadonlySet<Word>,
  ): void {
    const { width, height, symbols } = drawing;
    put(this.svg, 'viewBox', `0 0 ${width} ${height}`);
    const ribbons = shown.has('arrows')
      ? drawing.ribbons
      : drawing.ribbons.map((run) => ({ ...run, arrows: [] }));
    this.#ribbons = shown.has('ribbons') ? prepareRibbons({ ...drawing, ribbons }, ids) : undefined;
    this.#glows = symbols.flatMap(({ id, at }) =>
      lamps.includes(id)
        ? [{ id, disc: shape('circle', { cx: at.x, cy: at.y, r: 24, fill: 'url(#glow)' }) }]
        : [],
    );
    this.svg.replaceChildren(softEdge(), ...this.#glows.map(({ disc }) => disc), this.#path);
  }

  /** Draws the ribbons of these currents, at so many pixels for an ampere, and lets the lamps glow, each from 0 to 1. */
  draw(currents: Float64Array, scale: number, glow: (id: string) => number): void {
    put(this.#path, 'd', this.#ribbons?.path(currents, scale) ?? '');
    for (const { id, disc } of this.#glows) put(disc, 'opacity', glow(id).toFixed(2));
  }
}

/** A disc of light without an edge. */
function softEdge(): SVGDefsElement {
  const stop = (offset: number, opacity: number): SVGStopElement =>
    shape('stop', { class: 'light', offset, 'stop-opacity': opacity });
  return shape('defs', {}, shape('radialGradient', { id: 'glow' }, stop(0.4, 0.9), stop(1, 0)));
}
