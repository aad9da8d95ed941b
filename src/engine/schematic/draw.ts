import { isPoint, type Circuit } from '../circuit/index.ts';
import { seriesParallel, type Irreducible, type Tree } from '../topology/index.ts';
import type { Measure } from './block.ts';
import { bestOf, drawingOf, partsOf } from './drawing-of.ts';
import type { Drawing, DrawingStyle, Share } from './drawing.ts';
import { loopPlans } from './loop.ts';
import { networkPlan } from './network.ts';
import type { Plan, Size } from './plan.ts';
import { marked } from './zero-mark.ts';

/** A drawing whose size is known before it is drawn. */
export interface PlannedDrawing extends Size {
  readonly kind: 'planned';
  /** Draws it, anew each time. */
  readonly draw: () => Drawing;
}

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

const done = (drawing: Drawing): PlannedDrawing => {
  const { width, height } = drawing;
  return { kind: 'planned', width, height, draw: () => drawing };
};

/** Plans what `drawSchematic` draws: how large it will be takes less time than the drawing. */
export function planSchematic(circuit: Circuit, style: DrawingStyle = {}): PlannedDrawing | Irreducible {
  const { circuit: drawn, carries } = marked(circuit) ?? { circuit, carries: undefined };
  const tree = seriesParallel(drawn);
  if (tree.kind === 'irreducible')
    return webDrawer && circuit.components.length > 0 ? done(webDrawer(drawn, style, carries)) : tree;
  const plan = planTree(tree, drawn, style, carries);
  // The letters of labelled points find their places, and may ask for room, when all else is drawn.
  if (drawn.components.some(({ from, to }) => isPoint(from) || isPoint(to))) return done(drawingOf(plan));
  return { kind: 'planned', ...plan.size, draw: () => drawingOf(plan) };
}

/**
 * A circuit as symbols, wires, labels and ribbons on a plane. The same circuit and style give the same drawing; no value and no
 * switch moves anything. What is not series and parallel all the way down comes back as the irreducible rest until `prepare` has
 * loaded what draws it; a circuit without components always does.
 */
export function drawSchematic(circuit: Circuit, style: DrawingStyle = {}): Drawing | Irreducible {
  const planned = planSchematic(circuit, style);
  return planned.kind === 'planned' ? planned.draw() : planned;
}
