import type { Point } from '../drawing.ts';
import { drawAt } from '../draw-at.ts';
import { margin, type Plan, type Size } from '../plan.ts';

/** Plans beside each other, as many in a row as there is room for, and rows under each other. */
export function beside(plans: readonly Plan[], widest: number): Plan {
  const corners: Point[] = [];
  let size: Size = { width: 0, height: 0 };
  let [x, y] = [0, 0];
  for (const { size: own } of plans) {
    if (x > 0 && x + own.width > widest) [x, y] = [0, size.height + margin];
    corners.push({ x, y });
    x += own.width + margin;
    size = { width: Math.max(size.width, x - margin), height: Math.max(size.height, y + own.height) };
  }
  return {
    cost: plans.reduce((sum, { cost }) => sum + cost, 0),
    size,
    draw: (page) => plans.flatMap((plan, i) => drawAt(page, corners[i] ?? { x: 0, y: 0 }, plan)),
  };
}
