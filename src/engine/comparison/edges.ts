import type { Drawing, Point, RibbonRun } from '../schematic/index.ts';
import type { ExactSolution, Solution } from '../solve/index.ts';

/** Ribbons thinner than this part of a pixel are not drawn. */
const thinnest = 0.01;

/** A path at a distance to the left of a right-angled one (to its right where that is less than 0). */
function beside(points: readonly Point[], away: number): string {
  const way = (from: Point | undefined, to: Point | undefined): readonly [number, number] =>
    from && to ? [Math.sign(to.x - from.x), Math.sign(to.y - from.y)] : [0, 0];
  return points
    .map((point, place) => {
      const [inX, inY] = way(points[place - 1], point);
      const [outX, outY] = way(point, points[place + 1]);
      const x = point.x + away * (inY + outY);
      const y = point.y - away * (inX + outX);
      return `${place === 0 ? 'M' : 'L'}${x.toFixed(2)} ${y.toFixed(2)}`;
    })
    .join('');
}

const currentOf = (held: ExactSolution | Solution, { carries }: RibbonRun): number =>
  carries.reduce((sum, { id, sign }) => sum + sign * Number(held.quantity(`I_${id}`) ?? 0), 0);

/** Both edges of the ribbons that held readings would have, as one path of open lines; `scale` is pixels for an ampere. */
export function edgesOf(drawing: Drawing, held: ExactSolution | Solution, scale: number): string {
  return drawing.ribbons
    .map((run) => {
      const half = (Math.abs(currentOf(held, run)) * scale) / 2;
      return 2 * half < thinnest ? '' : beside(run.points, half) + beside(run.points, -half);
    })
    .join('');
}
