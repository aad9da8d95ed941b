import type { Point } from './drawing.ts';
import type { Page } from './page.ts';

/** Width and height, free edges included. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A way to draw a circuit, and how far it is from the best one. */
export interface Plan {
  readonly cost: number;
  readonly size: Size;
  /** Draws it, and says where its terminals are. */
  readonly draw: (page: Page) => readonly Point[];
}

/** The free edge round everything that is drawn. */
export const margin = 8;

/** Width over height: nearly square where there is little width, landscape where there is enough. */
const proportion = (widest: number): number => 1.25 + Math.min(Math.max((widest - 300) / 300, 0), 1) / 4;

const even = (x: number): number => 2 * Math.round(x / 2);

/** Brings a size nearer to the proportions of the page, by not much, and small ones to a size that can be read at a glance. */
export function stretch({ width, height }: Size, widest: number): Size {
  const wanted = proportion(widest);
  const least = Math.min(280, widest - 80);
  const wider = Math.max(width, least, Math.min(height * wanted, width * 2, widest));
  const higher = Math.max(height, least / 2, Math.min(wider / wanted, height * 1.3));
  return { width: even(wider), height: even(higher) };
}

/** How badly a size fits the page. */
export function unfit({ width, height }: Size, widest: number): number {
  const over = Math.max(0, width - widest);
  const shape = Math.abs(Math.log(width / height / proportion(widest)));
  return (over * over) / 4 + 100 * shape + Math.sqrt(width * height) / 2;
}
