import type { Box, Point } from './drawing.ts';
import type { Page } from './page.ts';
import type { Plan } from './plan.ts';

/** Draws a plan with its corner at a point of a page, and says where its terminals are. */
export function drawAt(page: Page, corner: Point, { draw }: Plan): Point[] {
  const own: Page = { pieces: [], symbols: [], labels: [], marks: [], hops: [], arrows: [] };
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
      ...(symbol.aside && { aside: movedBox(symbol.aside) }),
      hit: movedBox(symbol.hit),
    })),
  );
  page.labels.push(
    ...own.labels.map((label) => ({ ...label, at: moved(label.at), box: movedBox(label.box) })),
  );
  page.marks.push(
    ...own.marks.map((mark) => ({
      ...mark,
      at: moved(mark.at),
      baseline: moved(mark.baseline),
      box: movedBox(mark.box),
      textBox: movedBox(mark.textBox),
    })),
  );
  page.arrows.push(
    ...own.arrows.map((arrow) => ({ ...arrow, at: moved(arrow.at), box: movedBox(arrow.box) })),
  );
  page.hops.push(...own.hops.map((hop) => ({ ...hop, at: moved(hop.at) })));
  return terminals;
}
