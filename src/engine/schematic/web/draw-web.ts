import { pieces } from '../../topology/index.ts';
import { treePlans, type WebDrawer } from '../draw.ts';
import { bestOf, drawingOf, partsOf } from '../drawing-of.ts';
import { beside } from './beside.ts';
import { webPlans } from './plan.ts';

/** Draws bridges and all other circuits that are not series and parallel all the way down, for `equipWebs`. */
export const drawWeb: WebDrawer = (circuit, style, mark) => {
  const { width: widest = 640 } = style;
  const part = partsOf(circuit, style, mark);
  const plans = pieces(circuit).map((piece) =>
    bestOf((stacked) => {
      const measure = { part, stacked, left: false };
      return piece.tree ? treePlans(piece.tree, measure, widest) : webPlans(piece, measure, widest);
    }, widest),
  );
  return drawingOf(beside(plans, widest));
};
