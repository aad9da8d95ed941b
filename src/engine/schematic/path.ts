import type { Point } from './drawing.ts';

/** The radius of the half circle in which a wire passes over another. */
const hopRadius = 5;

/** The step from one point to the next one as path data, over the hops that lie between them. */
function stepTo(to: Point, from: Point, hops: readonly Point[]): string {
  const [dx, dy] = [Math.sign(to.x - from.x), Math.sign(to.y - from.y)];
  const along = (p: Point): number => (p.x - from.x) * dx + (p.y - from.y) * dy;
  const aside = (p: Point): number => (p.x - from.x) * dy - (p.y - from.y) * dx;
  const arcs = hops
    .filter((hop) => aside(hop) === 0 && along(hop) > 0 && along(hop) < along(to))
    .sort((p, q) => along(p) - along(q))
    .map(({ x, y }) => {
      const [rx, ry] = [hopRadius * dx, hopRadius * dy];
      return `L${x - rx} ${y - ry}a${hopRadius} ${hopRadius} 0 0 ${dx + dy > 0 ? 1 : 0} ${2 * rx} ${2 * ry}`;
    });
  return `${arcs.join('')}L${to.x} ${to.y}`;
}

/** A line through points as path data, with a small half circle at each of the hops that lie on it. */
export const lineOf = (points: readonly Point[], hops: readonly Point[] = []): string =>
  points.map((p, i) => (i === 0 ? `M${p.x} ${p.y}` : stepTo(p, points[i - 1] ?? p, hops))).join('');

const dot = ({ x, y }: Point, radius: number): string =>
  `M${x - radius} ${y}a${radius} ${radius} 0 0 1 ${2 * radius} 0a${radius} ${radius} 0 0 1 ${-2 * radius} 0Z`;

/** The radius of a junction's dot. */
export const dotRadius = 3.5;

/** Path data of a node's dots. */
export const dotsOf = (dots: readonly Point[]): string => dots.map((point) => dot(point, dotRadius)).join('');
