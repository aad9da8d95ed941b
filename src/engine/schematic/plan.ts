import type { Point } from './drawing.ts';
import type { Sheet } from './place.ts';

/** A way to draw a circuit, and how far it is from the best one. */
export interface Plan {
  readonly cost: number;
  readonly width: number;
  readonly terminals: readonly Point[];
  readonly draw: (sheet: Sheet) => void;
}

/** Width and height. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** What is left of a width without the free edges. */
export const roomFor = (widest: number): number => widest - 24;

/** Width over height: nearly square where there is little width, landscape where there is enough. */
const proportion = (widest: number): number => 1.25 + Math.min(Math.max((widest - 300) / 300, 0), 1) / 4;

/** Brings a size nearer to the proportions of the page, by not much, and small ones to a size that can be read at a glance. */
export function stretch({ width, height }: Size, widest: number): Size {
  const wanted = proportion(widest);
  const least = Math.min(260, widest - 100);
  const wider = Math.max(least, Math.min(height * wanted, width * 2, roomFor(widest)));
  const higher = Math.max(least / 2, Math.min(Math.max(width, wider) / wanted, height * 1.3));
  return {
    width: 2 * Math.round(Math.max(width, wider) / 2),
    height: 2 * Math.round(Math.max(height, higher) / 2),
  };
}

/** How badly a size fits the page. */
export function unfit({ width, height }: Size, widest: number): number {
  const over = Math.max(0, width - roomFor(widest));
  return (
    (over * over) / 4 +
    100 * Math.abs(Math.log(width / height / proportion(widest))) +
    Math.sqrt(width * height) / 2
  );
}
