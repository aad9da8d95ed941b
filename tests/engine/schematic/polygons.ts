import type { Point } from '../../../src/engine/schematic/index.ts';

/** The closed polygons, in pixels, of path data in hundredths made of M, H, V, h, v, l and Z; after Z one begins where the last began. */
export function polygonsOf(path: string): Point[][] {
  let [x, y] = [0, 0];
  return path
    .split('Z')
    .filter((text) => text !== '')
    .map((text) => {
      const points = text.startsWith('M') ? [] : [{ x, y }];
      for (const [, letter = '', rest = ''] of text.matchAll(/([MHVhvl])([^MHVhvl]+)/g)) {
        const numbers = rest.trim().split(/ +/).map(Number);
        for (let at = 0; at < numbers.length; at += /[HV]/i.test(letter) ? 1 : 2) {
          const [first = NaN, second = NaN] = numbers.slice(at);
          if (letter === 'H') x = first;
          else if (letter === 'V') y = first;
          else if (letter === 'h') x += first;
          else if (letter === 'v') y += first;
          else [x, y] = letter === 'l' ? [x + first, y + second] : [first, second];
          points.push({ x, y });
        }
      }
      const [first] = points;
      if (first) ({ x, y } = first);
      return points.map((point) => ({ x: point.x / 100, y: point.y / 100 }));
    });
}

/** Twice the area of a polygon, positive where it runs clockwise on the screen. */
export function doubleArea(polygon: readonly Point[]): number {
  return polygon.reduce((sum, { x, y }, i) => {
    const next = polygon[(i + 1) % polygon.length] ?? { x, y };
    return sum + x * next.y - next.x * y;
  }, 0);
}
