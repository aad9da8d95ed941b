import type { Box, Point } from '../drawing.ts';
import type { Page } from '../page.ts';
import { margin, type Plan, type Size } from '../plan.ts';

/** Draws a plan with its corner at a point of a page. */
function drawAt(page: Page, corner: Point, { draw }: Plan): Point[] {
  const own: Page = { pieces: [], symbols: [], labels: [], hops: [] };
  const moved = ({ x, y }: Point): Point => ({ x: x + corner.x, y: y + corner.y });
  const movedBox = (box: Box): Box => ({ ...box, ...moved(box) });
  const terminals = draw(own).map(moved);
  page.pieces.push(
    ...own.pieces.map((piece) => ({ ...piece, from: moved(piece.from), to: moved(piece.to) })),
  );
  page.symbols.push(
    ...own.symbols.map((symbol) => ({
      ...symbol,
      at: moved(symbol.at),
      box: movedBox(symbol.box),
      hit: movedBox(symbol.hit),
    })),
  );
  page.labels.push(
    ...own.labels.map((label) => ({ ...label, at: moved(label.at), box: movedBox(label.box) })),
  );
  page.hops.push(...own.hops.map((hop) => ({ ...hop, at: moved(hop.at) })));
  return terminals;
}

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
