import type { Point } from './drawing.ts';

/** Writes a ribbon's outline as path data from half its width and how far it goes on beyond its two ends. */
export type Outline = (half: number, before: number, after: number) => string;

/** A coordinate of an outline: base + h · half + b · before + a · after. */
type Coordinate = readonly [base: number, h: number, b: number, a: number];

/**
 * The outline of a ribbon of any width round a right-angled path: out along its left edge, back along its right one, clockwise, with
 * mitred corners. Every edge is level or upright, so that one number does for each.
 */
export function outlineOf(points: readonly Point[]): Outline {
  const legs = points.slice(1).map(({ x, y }, i) => ({
    dx: Math.sign(x - (points[i]?.x ?? x)),
    dy: Math.sign(y - (points[i]?.y ?? y)),
  }));
  const vertex = ({ x, y }: Point, i: number, side: 1 | -1): readonly [Coordinate, Coordinate] => {
    const [into, out] = [legs[i - 1], legs[i]];
    const across = side * ((into?.dy ?? 0) + (out?.dy ?? 0));
    const down = -side * ((into?.dx ?? 0) + (out?.dx ?? 0));
    const [before, after] = [into ? undefined : out, out ? undefined : into];
    return [
      [x, across, -(before?.dx ?? 0), after?.dx ?? 0],
      [y, down, -(before?.dy ?? 0), after?.dy ?? 0],
    ];
  };
  const left = points.map((point, i) => vertex(point, i, 1));
  const right = points.map((point, i) => vertex(point, i, -1)).reverse();
  const [first, ...others] = [...left, ...right];
  const there = legs.map(({ dy }) => dy === 0);
  const levels = [...there, !there.at(-1), ...there.reverse()];
  const steps = others.map(([x, y], i): readonly [string, Coordinate] => (levels[i] ? ['H', x] : ['V', y]));
  const all = first ? [['M', first[0]] as const, [' ', first[1]] as const, ...steps] : [];
  const letters = all.map(([letter]) => letter);
  const numbers = Float64Array.from(all.flatMap(([, coordinate]) => coordinate));
  return (half, before, after) => {
    let path = '';
    for (let i = 0; i < letters.length; i++) {
      const k = 4 * i;
      const value =
        (numbers[k] ?? 0) +
        half * (numbers[k + 1] ?? 0) +
        before * (numbers[k + 2] ?? 0) +
        after * (numbers[k + 3] ?? 0);
      path += `${letters[i] ?? ''}${Math.round(value * 100) / 100}`;
    }
    return `${path}Z`;
  };
}
