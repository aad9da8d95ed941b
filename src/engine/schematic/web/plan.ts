import type { Piece as Part } from '../../topology/index.ts';
import { ribbonRoom, type Measure } from '../block.ts';
import type { Piece } from '../page.ts';
import { margin, stretch, unfit, type Plan } from '../plan.ts';
import { aligned } from './aligned.ts';
import { layoutOf, type Layout } from './layout.ts';
import { drawLayout } from './rails.ts';
import { webOf, type Web } from './web.ts';

/** Differences of heights that a bar may have: none but by chance, or any. */
const slopes = [0.02, 1];

const edge = margin + ribbonRoom;

function planOf(layout: Layout, widest: number): Plan {
  const { measure, length, breadth, bars, columns, rows } = layout;
  const [along, across] = [length + 2 * edge, breadth + 2 * margin];
  const natural = measure.upright ? { width: across, height: along } : { width: along, height: across };
  const size = stretch(natural, widest);
  const [longer, broader] = measure.upright
    ? [size.height / natural.height, size.width / natural.width]
    : [size.width / natural.width, size.height / natural.height];
  const scaled = (place: number, by: number): number => 2 * Math.floor((place * by) / 2);
  return {
    cost: unfit(size, widest) + (measure.upright ? 20 : 0) - 30 * bars.length,
    size,
    draw: (page) => {
      const pieces: Piece[] = [];
      const terminals = drawLayout(
        { ...page, pieces },
        {
          ...layout,
          rows: rows.map((place) => edge + scaled(place, longer)),
          columns: columns.map((place) => margin + scaled(place, broader)),
        },
      );
      page.pieces.push(...aligned(pieces));
      return terminals;
    },
  };
}

function layoutsOf(web: Web, measure: Measure): Layout[] {
  return [false, true].flatMap((mirrored) => {
    const bent = slopes.flatMap((steepest) => layoutOf(web, measure, { mirrored, steepest }) ?? []);
    return bent.length > 0 ? bent : (layoutOf(web, measure, { mirrored, steepest: -1 }) ?? []);
  });
}

/** The ways to draw a piece of a circuit that is not series and parallel all the way down. */
export function webPlans(piece: Part, measure: Omit<Measure, 'upright'>, widest: number): Plan[] {
  const web = webOf(piece);
  return [false, true].flatMap((upright) =>
    layoutsOf(web, { ...measure, upright }).map((layout) => planOf(layout, widest)),
  );
}
