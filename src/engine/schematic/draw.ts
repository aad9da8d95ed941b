import type { Circuit } from '../circuit/index.ts';
import { seriesParallel, type Irreducible, type Tree } from '../topology/index.ts';
import type { Measure } from './block.ts';
import { captionOf } from './caption.ts';
import type { Box, Drawing, DrawingStyle, Point } from './drawing.ts';
import { glyphOf } from './glyph.ts';
import { loopPlans } from './loop.ts';
import { networkPlan, terminalRadius } from './network.ts';
import type { Sheet } from './place.ts';
import { roomFor, type Plan } from './plan.ts';
import { runsOf } from './runs.ts';
import { wiresOf } from './wires.ts';

/** The free edge round everything that is drawn. */
const margin = 12;

function partsOf(circuit: Circuit, style: DrawingStyle): Measure['part'] {
  const parts = new Map(
    circuit.components.map((component) => [
      component.id,
      {
        glyph: glyphOf(component, style.symbols),
        caption: captionOf(component, style.values?.(component.id)),
        outermost: component.kind === 'voltmeter',
        sign: component.kind === 'supply' ? -1 : 1,
      } as const,
    ]),
  );
  return (id) => {
    const part = parts.get(id);
    if (!part) throw new RangeError(id);
    return part;
  };
}

/** The best way to draw a tree; values stand under their labels only where it would be too wide otherwise. */
function planOf(tree: Tree, part: Measure['part'], widest: number): Plan {
  const best = (stacked: boolean): Plan => {
    const plans = (['h', 'v'] as const).flatMap((axis) => {
      const measure = { axis, part, stacked, left: false };
      return tree.kind === 'series' && tree.from === tree.to
        ? loopPlans(tree, measure, widest)
        : [networkPlan(tree, measure, widest)];
    });
    return plans.reduce((best, plan) => (plan.cost < best.cost ? plan : best));
  };
  const plain = best(false);
  if (plain.width <= roomFor(widest)) return plain;
  const stacked = best(true);
  return stacked.cost + 25 < plain.cost ? stacked : plain;
}

/** The rectangle that holds everything, ribbons included. */
function extent({ pieces, symbols, labels }: Sheet, terminals: readonly Point[]): Box {
  const boxes: Box[] = [...symbols.map(({ box }) => box), ...labels.map(({ box }) => box)];
  const around = (x: number, y: number, room: number): Box => ({
    x: x - room,
    y: y - room,
    width: 2 * room,
    height: 2 * room,
  });
  for (const { from, to } of pieces) boxes.push(around(from.x, from.y, 8), around(to.x, to.y, 8));
  for (const { x, y } of terminals) boxes.push(around(x, y, terminalRadius));
  const left = Math.min(...boxes.map(({ x }) => x));
  const top = Math.min(...boxes.map(({ y }) => y));
  return {
    x: left,
    y: top,
    width: Math.max(...boxes.map(({ x, width }) => x + width)) - left,
    height: Math.max(...boxes.map(({ y, height }) => y + height)) - top,
  };
}

/** Moves everything so that the extent begins at the margin. */
function moved(sheet: Sheet, { x, y }: Box): { sheet: Sheet; move: (p: Point) => Point } {
  const [dx, dy] = [Math.round(margin - x), Math.round(margin - y)];
  const move = (p: Point): Point => ({ x: p.x + dx, y: p.y + dy });
  const box = (b: Box): Box => ({ ...b, ...move(b) });
  return {
    move,
    sheet: {
      pieces: sheet.pieces.map((piece) => ({ ...piece, from: move(piece.from), to: move(piece.to) })),
      symbols: sheet.symbols.map((symbol) => ({
        ...symbol,
        at: move(symbol.at),
        box: box(symbol.box),
        hit: box(symbol.hit),
      })),
      labels: sheet.labels.map((label) => ({ ...label, at: move(label.at), box: box(label.box) })),
    },
  };
}

/** Draws a circuit whose series–parallel tree is known. */
export function drawTree(tree: Tree, circuit: Circuit, style: DrawingStyle = {}): Drawing {
  const best = planOf(tree, partsOf(circuit, style), style.width ?? 640);
  const raw: Sheet = { pieces: [], symbols: [], labels: [] };
  best.draw(raw);
  const box = extent(raw, best.terminals);
  const { sheet, move } = moved(raw, box);
  return {
    kind: 'drawing',
    width: Math.ceil(box.width) + 2 * margin,
    height: Math.ceil(box.height) + 2 * margin,
    symbols: sheet.symbols,
    wires: wiresOf(sheet.pieces),
    labels: sheet.labels,
    ribbons: runsOf(sheet.pieces),
    terminals: best.terminals.map(move),
  };
}

/**
 * A circuit as symbols, wires, labels and ribbons on a plane. What is not series and parallel all the way down is not drawn: it
 * comes back as the irreducible rest. The same circuit and style give the same drawing; no value and no switch moves anything.
 */
export function drawSchematic(circuit: Circuit, style: DrawingStyle = {}): Drawing | Irreducible {
  const tree = seriesParallel(circuit);
  return tree.kind === 'irreducible' ? tree : drawTree(tree, circuit, style);
}
