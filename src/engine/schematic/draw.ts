import { isPoint, type Circuit } from '../circuit/index.ts';
import { seriesParallel, type Irreducible, type Tree } from '../topology/index.ts';
import type { Measure } from './block.ts';
import { bestOf, drawingOf, partsOf } from './drawing-of.ts';
import type { Drawing, DrawingStyle, Share } from './drawing.ts';
import { loopPlans } from './loop.ts';
import { networkPlan } from './network.ts';
import type { Plan, Size } from './plan.ts';
import { marked } from './zero-mark.ts';

/** Draws circuits that are not series and parallel all the way down: it stands in a file of its own, loaded where one is needed. */
export type WebDrawer = (circuit: Circuit, style: DrawingStyle, mark?: readonly Share[]) => Drawing;

let webDrawer: WebDrawer | undefined;

/** Makes `drawSchematic` hand those circuits over that are not series and parallel all the way down. */
export function equipWebs(drawer: WebDrawer): void {
  webDrawer = drawer;
}

/** The ways to draw a tree; in both directions of the page. */
export function treePlans(tree: Tree, measure: Omit<Measure, 'upright'>, widest: number): Plan[] {
  return [false, true].flatMap((upright) =>
    tree.kind === 'series' && tree.from === tree.to
      ? loopPlans(tree, { ...measure, upright }, widest)
      : [networkPlan(tree, { ...measure, upright }, widest)],
  );
}

function planTree(tree: Tree, circuit: Circuit, style: DrawingStyle, mark?: readonly Share[]): Plan {
  const { width: widest = 640 } = style;
  const part = partsOf(circuit, style, mark);
  return bestOf((stacked) => treePlans(tree, { part, stacked, left: false }, widest), widest);
}

/** Draws a circuit whose series–parallel tree is known. */
export function drawTree(
  tree: Tree,
  circuit: Circuit,
  style: DrawingStyle = {},
  mark?: readonly Share[],
): Drawing {
  return drawingOf(planTree(tree, circuit, style, mark));
}

/**
 * A circuit as symbols, wires, labels and ribbons on a plane. The same circuit and style give the same drawing; no value and no
 * switch moves anything. What is not series and parallel all the way down comes back as the irreducible rest until `prepare` has
 * loaded what draws it; a circuit without components always does.
 */
export function drawSchematic(circuit: Circuit, style: DrawingStyle = {}): Drawing | Irreducible {
  const { circuit: drawn, carries } = marked(circuit) ?? { circuit, carries: undefined };
  const tree = seriesParallel(drawn);
  if (tree.kind !== 'irreducible') return drawTree(tree, drawn, style, carries);
  return webDrawer && circuit.components.length > 0 ? webDrawer(drawn, style, carries) : tree;
}

/** How large the drawing of a circuit is, mostly found without drawing it; undefined where there is none. */
export function schematicSize(circuit: Circuit, style: DrawingStyle = {}): Size | undefined {
  const { circuit: drawn, carries } = marked(circuit) ?? { circuit, carries: undefined };
  const tree = seriesParallel(drawn);
  // The letters of labelled points find their places, and may ask for room, when all else is drawn.
  const isLabelled = drawn.components.some(({ from, to }) => isPoint(from) || isPoint(to));
  if (tree.kind !== 'irreducible' && !isLabelled) return planTree(tree, drawn, style, carries).size;
  const drawing = drawSchematic(circuit, style);
  return drawing.kind === 'drawing' ? drawing : undefined;
}
