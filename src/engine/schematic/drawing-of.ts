import { isContact, isPoint, isSupply, isTrack, type Circuit } from '../circuit/index.ts';
import { quantitiesDrawer, type Measure } from './block.ts';
import { captionOf } from './caption.ts';
import { drawAt } from './draw-at.ts';
import type { Box, Drawing, DrawingStyle, NodeWires, Point, Share } from './drawing.ts';
import { glyphOf } from './glyph.ts';
import { meetingsOf, pathsOf } from './net.ts';
import type { Page, Piece } from './page.ts';
import type { Plan, Size } from './plan.ts';
import { spotsOf, type Spot } from './points.ts';
import { runsOf } from './runs.ts';
import { nodesOf } from './wires.ts';
import { markedNode, markId } from './zero-mark.ts';

/** What is drawn for each component of a circuit. */
export function partsOf(circuit: Circuit, style: DrawingStyle, mark?: readonly Share[]): Measure['part'] {
  const parts = new Map(
    circuit.components.map((component) => [
      component.id,
      {
        glyph: glyphOf(component, style.symbols),
        caption: captionOf(component, style.values?.(component.id)),
        outermost: component.kind === 'voltmeter',
        contact: isContact(component) ? component.closed : undefined,
        track: isTrack(component) ? (style.symbols ?? 'iec') : undefined,
        supplies: isSupply(component),
        condition: component.condition,
        mark: component.id === markId ? mark : undefined,
        quantities: style.quantities?.filter(({ id }) => id === component.id) ?? [],
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

/** Room round the drawing for the letters of labelled points. */
const frame = 14;

/** The page with what is called by the node at the far side of the 0 V mark called by its one name. */
function named(page: Page): Page {
  const ofNode = <T extends { readonly node?: string }>(one: T): T =>
    one.node === undefined ? one : { ...one, node: markedNode(one.node) };
  return { ...page, pieces: page.pieces.map(ofNode), hops: page.hops.map(ofNode) };
}

const emptyPage = (): Page => ({ pieces: [], symbols: [], labels: [], marks: [], hops: [], arrows: [] });

/** The drawing that a plan leads to. */
export function drawingOf(plan: Plan): Drawing {
  const page = emptyPage();
  const terminals = plan.draw(page);
  if (!named(page).pieces.some(({ node = '' }) => isPoint(node)))
    return drawingOn(named(page), plan.size, terminals);
  const framed = emptyPage();
  const moved = drawAt(framed, { x: frame, y: frame }, plan);
  const { width, height } = plan.size;
  const { pieces } = named(framed);
  return withPoints(
    drawingOn(named(framed), { width: width + 2 * frame, height: height + 2 * frame }, moved),
    pieces,
  );
}

function drawingOn(
  { pieces, symbols, labels, marks, hops, arrows }: Page,
  size: Size,
  terminals: readonly Point[],
): Drawing {
  const [mark] = marks;
  const meetings = meetingsOf(pieces);
  const paths = pathsOf(pieces, meetings);
  const runs = runsOf(paths);
  return {
    kind: 'drawing',
    ...size,
    symbols,
    wires: nodesOf(paths, meetings, hops),
    labels,
    ribbons:
      quantitiesDrawer()?.apart(
        runs,
        arrows,
        symbols.map(({ box }) => box),
      ) ?? runs,
    terminals,
    ...(mark && { mark }),
    ...(arrows.length > 0 && { arrows }),
  };
}

/** What the 0 V mark and the arrows of quantities take up. */
const taken = ({ mark, arrows = [] }: Drawing): Box[] => [
  ...(mark ? [mark.box, mark.textBox] : []),
  ...arrows.map(({ box }) => box),
];

/** The drawing with its labelled points. */
function withPoints(drawing: Drawing, pieces: readonly Piece[]): Drawing {
  const spots = spotsOf({
    ...drawing,
    wires: bareWires(pieces),
    taken: [...drawing.labels.map(({ box }) => box), ...taken(drawing)],
  });
  return {
    ...drawing,
    wires: spots.reduce(withDot, drawing.wires),
    labels: [...drawing.labels, ...spots.map(({ label }) => label)],
  };
}

/** The wires of the nodes as they are where no component has a wire across it. */
function bareWires(pieces: readonly Piece[]): NodeWires[] {
  const bare = pieces.filter(({ node }) => !node?.endsWith(' bridge'));
  const meetings = meetingsOf(bare);
  return nodesOf(pathsOf(bare, meetings), meetings, []);
}

/** The wires with the dot of a labelled point, where there is none yet. */
function withDot(wires: readonly NodeWires[], { label, dot }: Spot): readonly NodeWires[] {
  return wires.map((own) => {
    if (!dot || own.node !== label.id || own.dots.some(({ x, y }) => x === dot.x && y === dot.y)) return own;
    return { ...own, dots: [...own.dots, dot] };
  });
}
