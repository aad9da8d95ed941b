import type { Circuit } from '../circuit/index.ts';
import { seriesParallel, type Irreducible, type Tree } from '../topology/index.ts';
import type { Measure } from './block.ts';
import { captionOf } from './caption.ts';
import type { Drawing, DrawingStyle } from './drawing.ts';
import { glyphOf } from './glyph.ts';
import { loopPlans } from './loop.ts';
import { meetingsOf, pathsOf } from './net.ts';
import { networkPlan } from './network.ts';
import type { Page } from './page.ts';
import type { Plan } from './plan.ts';
import { runsOf } from './runs.ts';
import { nodesOf } from './wires.ts';

function partsOf(circuit: Circuit, style: DrawingStyle): Measure['part'] {
  const parts = new Map(
    circuit.components.map((component) => [
      component.id,
      {
        glyph: glyphOf(component, style.symbols),
        caption: captionOf(component, style.values?.(component.id)),
        outermost: component.kind === 'voltmeter',
        supplies: component.kind === 'supply',
        condition: component.condition,
      },
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
    const plans = [false, true].flatMap((upright) => {
      const measure = { upright, part, stacked, left: false };
      return tree.kind === 'series' && tree.from === tree.to
        ? loopPlans(tree, measure, widest)
        : [networkPlan(tree, measure, widest)];
    });
    return plans.reduce((best, plan) => (plan.cost < best.cost ? plan : best));
  };
  const plain = best(false);
  if (plain.size.width <= widest) return plain;
  const stacked = best(true);
  return stacked.cost + 25 < plain.cost ? stacked : plain;
}

/** Draws a circuit whose series–parallel tree is known. */
export function drawTree(tree: Tree, circuit: Circuit, style: DrawingStyle = {}): Drawing {
  const { size, draw } = planOf(tree, partsOf(circuit, style), style.width ?? 640);
  const page: Page = { pieces: [], symbols: [], labels: [] };
  const terminals = draw(page);
  const { pieces, symbols, labels } = page;
  const meetings = meetingsOf(pieces);
  const paths = pathsOf(pieces, meetings);
  return {
    kind: 'drawing',
    ...size,
    symbols,
    wires: nodesOf(paths, meetings),
    labels,
    ribbons: runsOf(paths),
    terminals,
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
