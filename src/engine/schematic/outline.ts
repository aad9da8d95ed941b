import type { Point } from './drawing.ts';

/** The parts of a pixel in which ribbons are written: whole numbers are read and written much faster. */
export const fine = 100;

/** Writes a ribbon's outline as path data from half its width and how far it goes on beyond its two ends, all in fine parts. */
export type Outline = (half: number, before: number, after: number) => string;

/** A coordinate of an outline: base + h · half + b · before + a · after. */
type Coordinate = readonly [base: number, h: number, b: number, a: number];

/**
 * The outline of a ribbon of any width round a right-angled path: out along its left edge, back along its right one, clockwise, with
 * mitred corners. Its edges are level and upright by turns, so that one number does for each.
 */
export function outlineOf(points: readonly Point[]): Outline {
  const legs = points.slice(1).map(({ x, y }, i) => ({
    dx: Math.sign(x - (points[i]?.x ?? x)),
    dy: Math.sign(y - (points[i]?.y ?? y)),
  }));
  const edge = (side: 1 | -1): (readonly [x: Coordinate, y: Coordinate])[] =>
    points.map(({ x, y }, i) => {
      const none = { dx: 0, dy: 0 };
      const [into = none, out = none] = [legs[i - 1], legs[i]];
      const [b, a] = [into === none ? -1 : 0, out === none ? 1 : 0];
      return [
        [x, side * (into.dy + out.dy), b * out.dx, a * into.dx],
        [y, -side * (into.dx + out.dx), b * out.dy, a * into.dy],
      ];
    });
  const level = legs[0]?.dy === 0 ? 1 : 0;
  const steps = [...edge(1), ...edge(-1).reverse()].flatMap(([x, y], i): (readonly [string, Coordinate])[] =>
    i === 0
      ? [
          ['M', x],
          [' ', y],
        ]
      : [i % 2 === level ? ['H', x] : ['V', y]],
  );
  return (half, before, after) => {
    let path = '';
    for (const [letter, [base, h, b, a]] of steps) {
      path += `${letter}${Math.round(base * fine + h * half + b * before + a * after)}`;
    }
    return `${path}Z`;
  };
}
