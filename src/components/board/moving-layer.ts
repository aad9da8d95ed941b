import { prepareRibbons, type Drawing, type Ribbons } from '../../engine/core.ts';
import type { Flow } from './flow.ts';
import { put, shape } from './shape.ts';
import type { Word } from './shown.ts';

/** Ribbons are written in these parts of a pixel, and so is all that moves: where it has one scale, it is painted in one piece. */
const fine = 100;

/** What moves while a slider moves: all ribbons as one path, and the glow of the lamps, under the still drawing. */
export class MovingLayer {
  readonly svg: SVGSVGElement = shape('svg', { class: 'moving', 'aria-hidden': 'true' });
  readonly #path = shape('path', { class: 'ribbons' });
  /** The edges of the ribbons that are held. */
  readonly #edges = shape('path', { class: 'held', transform: `scale(${fine})` });
  #ribbons: Ribbons | undefined;
  #glows: readonly SVGElement[] = [];

  /** Prepares for a drawing and what flows in it. */
  prepare(drawing: Drawing, { ids, lamps }: Flow, shown: ReadonlySet<Word>): void {
    const { width, height, symbols } = drawing;
    const [right, bottom] = [fine * width, fine * height];
    put(this.svg, 'viewBox', `0 0 ${right} ${bottom}`);
    const ribbons = shown.has('arrows')
      ? drawing.ribbons
      : drawing.ribbons.map((run) => ({ ...run, arrows: [] }));
    this.#ribbons = shown.has('ribbons') ? prepareRibbons({ ...drawing, ribbons }, ids) : undefined;
    this.#glows = lamps.map((lamp) => {
      const { x = 0, y = 0 } = symbols.find(({ id }) => id === lamp)?.at ?? {};
      const r = shown.has('readings') ? 24 * fine : 0;
      return shape('circle', { cx: fine * x, cy: fine * y, r, fill: 'url(#glow)' });
    });
    // Where the bounds of a piece change, Chromium arranges the layers of the page anew: two corners without a surface keep them.
    const bounds = shape('path', { class: 'filled', d: `M0 0H0ZM${right} ${bottom}H${right}Z` });
    this.svg.replaceChildren(softEdge(), bounds, ...this.#glows, this.#path, this.#edges);
  }

  /** Marks how wide the ribbons were. */
  mark(edges: string): void {
    put(this.#edges, 'd', edges);
  }

  /** Draws the ribbons at so many pixels for an ampere, and lets the lamps glow, most at `brightest` watts. */
  draw({ currents, powers }: Flow, perAmpere: number, brightest: number): void {
    this.#path.setAttribute('d', this.#ribbons?.path(currents, perAmpere) ?? '');
    this.#glows.forEach((disc, lamp) => {
      put(disc, 'fill-opacity', Math.min(1, (powers[lamp] ?? 0) / brightest).toFixed(2));
    });
  }
}

/** A disc of light without an edge. */
function softEdge(): SVGDefsElement {
  const stop = (offset: number, opacity: number): SVGStopElement =>
    shape('stop', { class: 'light', offset, 'stop-opacity': opacity });
  return shape('defs', {}, shape('radialGradient', { id: 'glow' }, stop(0.4, 0.9), stop(1, 0)));
}
