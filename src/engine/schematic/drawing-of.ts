import { isContact, isSupply, type Circuit } from '../circuit/index.ts';
import type { Measure } from './block.ts';
import { captionOf } from './caption.ts';
import type { Drawing, DrawingStyle } from './drawing.ts';
import { glyphOf } from './glyph.ts';
import { meetingsOf, pathsOf } from './net.ts';
import type { Page } from './page.ts';
import type { Plan } from './plan.ts';
import { runsOf } from './runs.ts';
import { nodesOf } from './wires.ts';

/** What is drawn for each component of a circuit. */
export function partsOf(circuit: Circuit, style: DrawingStyle): Measure['part'] {
  const parts = new Map(
    circuit.components.map((component) => [
      component.id,
      {
        glyph: glyphOf(component, style.symbols),
        caption: captionOf(component, style.values?.(component.id)),
        outermost: component.kind === 'voltmeter',
        contact: isContact(component) ? component.closed : undefined,
        supplies: isSupply(component),
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

/** The best of the plans; values stand under their labels only where it would be too wide otherwise. */
export function bestOf(plansOf: (stacked: boolean) => readonly Plan[], widest: number): Plan {
  const best = (stacked: boolean): Plan =>
    plansOf(stacked).reduce((best, plan) => (plan.cost < best.cost ? plan : best));
  const plain = best(false);
  if (plain.size.width <= widest) return plain;
  const stacked = best(true);
  return stacked.cost + 25 < plain.cost ? stacked : plain;
}

/** The drawing that a plan leads to. */
export function drawingOf({ size, draw }: Plan): Drawing {
  const page: Page = { pieces: [], symbols: [], labels: [], hops: [] };
  const terminals = draw(page);
  const { pieces, symbols, labels, hops } = page;
  const meetings = meetingsOf(pieces);
  const paths = pathsOf(pieces, meetings);
  return {
    kind: 'drawing',
    ...size,
    symbols,
    wires: nodesOf(paths, meetings, hops),
    labels,
    ribbons: runsOf(paths),
    terminals,
  };
}
