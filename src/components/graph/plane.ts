import type { Axis } from '../axis/index.ts';

/** Pixels round the plane: room for the marks of both axes, and for the names of the curves. */
const edge = { left: 52, right: 56, top: 10, bottom: 30 };
/** The least and the most pixels that a graph has from side to side, and how high it is. */
const size = { narrowest: 240, broadest: 640, lowest: 200, highest: 320 };

/** Where values stand on a graph, in pixels. */
export interface Plane {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  /** The value that stands at so many pixels from the left. */
  readonly valueAt: (x: number) => number;
}

/** A place is seen to a tenth of a pixel. */
const tenth = (pixels: number): number => Math.round(pixels * 10) / 10;

/** A plane in so many pixels from side to side, 0 while that is not known; along may be even in the logarithm. */
export function planeOf(along: Axis, up: Axis, logarithmic: boolean, room: number): Plane {
  const width = Math.min(Math.max(room || size.broadest, size.narrowest), size.broadest);
  const height = Math.min(Math.max(Math.round(width * 0.55), size.lowest), size.highest);
  const [left, right, top, bottom] = [edge.left, width - edge.right, edge.top, height - edge.bottom];
  const scale = logarithmic ? Math.log : (value: number): number => value;
  const [first, last] = [scale(along.low), scale(along.high)];
  return {
    width,
    height,
    left,
    right,
    top,
    bottom,
    x: (value) => tenth(left + ((scale(value) - first) / (last - first)) * (right - left)),
    y: (value) => tenth(bottom - ((value - up.low) / (up.high - up.low)) * (bottom - top)),
    valueAt: (x) => {
      const at = first + Math.min(Math.max((x - left) / (right - left), 0), 1) * (last - first);
      return logarithmic ? Math.exp(at) : at;
    },
  };
}

/** A curve as a path; it has a gap where there is no value. */
export function pathOf(
  settings: readonly number[],
  values: readonly (number | undefined)[],
  { x, y }: Plane,
): string {
  let draws = false;
  return settings
    .map((setting, place) => {
      const value = values[place];
      const piece = value === undefined ? '' : `${draws ? 'L' : 'M'}${x(setting)} ${y(value)}`;
      draws = value !== undefined;
      return piece;
    })
    .join('');
}

/** Heights for names beside their curves, each as near to its own as the others let it; in the order given. */
export function apart(heights: readonly number[], least: number, lowest: number): readonly number[] {
  const order = heights.map((height, place) => ({ height, place })).sort((a, b) => a.height - b.height);
  const placed = order.map(({ height }) => height);
  for (let k = 1; k < placed.length; k++) placed[k] = Math.max(placed[k] ?? 0, (placed[k - 1] ?? 0) + least);
  for (let k = placed.length - 1, most = lowest; k >= 0; k--, most -= least)
    placed[k] = Math.min(placed[k] ?? 0, most);
  const found = new Map(order.map(({ place }, k) => [place, placed[k] ?? 0]));
  return heights.map((_, place) => found.get(place) ?? 0);
}
