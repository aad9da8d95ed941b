import type { Point } from '../../../src/engine/schematic/index.ts';

/** The closed polygons of path data made of M, L, H, V and Z. */
export function polygonsOf(path: string): Point[][] {
  return path
    .split('Z')
    .filter((text) => text !== '')
    .map((text) => {
      let [x, y] = [0, 0];
      return [...text.matchAll(/([MLHV])([^MLHV]+)/g)].map(([, letter, numbers = '']) => {
        const [first = NaN, second = NaN] = numbers.trim().split(/[ ,]+/).map(Number);
        if (letter === 'H') x = first;
        else if (letter === 'V') y = first;
        else [x, y] = [first, second];
        return { x, y };
      });
    });
}

/** Twice the area of a polygon, positive where it runs clockwise on the screen. */
export function doubleArea(polygon: readonly Point[]): number {
  return polygon.reduce((sum, { x, y }, i) => {
    const next = polygon[(i + 1) % polygon.length] ?? { x, y };
    return sum + x * next.y - next.x * y;
  }, 0);
}
