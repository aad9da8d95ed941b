import { isContact, isSupply, isTrack, type Circuit, type Component } from '../circuit/index.ts';
import type { PlacedLabel, PlacedMark, Point, Share } from './drawing.ts';
import { turned } from './glyph.ts';
import type { Measure } from './block.ts';
import { textWidth } from './text.ts';
import { thinSpace } from '../quantity/index.ts';

/** What stands for the 0 V mark among the components of a drawing's circuit: no label can be this. */
export const markId = '0 V';
/** How far its symbol reaches from its wire. */
export const markReach = 20;
/** What is written beside it. */
const words = `0${thinSpace}V`;
/** From the middle of a mark under a level wire to its words. */
export const markText = 14;
/** The room of these words. */
export const markWidth: number = textWidth(words);

/** The node at the far side of the mark, which is the same one. */
const beyond = (node: string): string => `${node}\t${markId}`;
/** The node that such a name means. */
export const markedNode = (node: string): string => node.replace(`\t${markId}`, '');

/** A circuit to be drawn with its mark as a piece of wire, and what flows along that. */
export interface Marked {
  readonly circuit: Circuit;
  readonly carries: readonly Share[];
}

/** The component beside which the mark stands: a supply if there is one, a voltmeter only if there is nothing else. */
function neighbour({ components, zero }: Circuit): Component | undefined {
  const there = components.filter(({ from, to }) => from !== to && (from === zero || to === zero));
  // The contacts of a changeover switch stay together, and so do the parts of a potentiometer.
  const single = there.filter((each) => !isContact(each) && !isTrack(each));
  return single.find(isSupply) ?? single.find(({ kind }) => kind !== 'voltmeter') ?? single[0] ?? there[0];
}

/** Gives the mark of a circuit room in its drawing: a piece of wire of its node, between that and one of the components there. */
export function marked(circuit: Circuit): Marked | undefined {
  const { components, zero } = circuit;
  const beside = neighbour(circuit);
  if (zero === undefined || !beside) return undefined;
  const isFrom = beside.from === zero;
  const far = beyond(zero);
  const moved: Component = { ...beside, ...(isFrom ? { from: far } : { to: far }) };
  const mark: Component = { id: markId, kind: 'wire', from: zero, to: far };
  // Its current is counted from the node to the component.
  const away: Share['sign'] = isFrom ? 1 : -1;
  const own: Share['sign'] = isSupply(beside) ? (isFrom ? -1 : 1) : away;
  return {
    circuit: {
      ...circuit,
      components: components.flatMap((each) => (each === beside ? [moved, mark] : [each])),
    },
    carries: [
      { id: beside.id, sign: own },
      ...(beside.condition === 'bridged' ? [{ id: `${beside.id} bridge`, sign: away }] : []),
    ],
  };
}

/** A stem and a thick bar: what is joined to the frame (IEC 60617, its hatching left out where nothing else is meant; from memory). */
const stem = 'M0,0L0,14';
const bar = 'M-10,13L10,13L10,16L-10,16Z';

/** The mark at a point of a wire: under a level one, beside an upright one where its labels stand. */
export function markAt(node: string, at: Point, { upright, left }: Measure): PlacedMark {
  const turn = upright ? (left ? 90 : 270) : 0;
  const way = left ? -1 : 1;
  const baseline = upright ? { x: at.x + way * 23, y: at.y + 5 } : { x: at.x + markText, y: at.y + 19 };
  const anchor: PlacedLabel['anchor'] = upright && left ? 'end' : 'start';
  const start = anchor === 'end' ? baseline.x - markWidth : baseline.x;
  return {
    node,
    at,
    path: turned(stem, turn),
    filled: turned(bar, turn),
    text: words,
    baseline,
    anchor,
    box: upright
      ? { x: way > 0 ? at.x : at.x - 16, y: at.y - 10, width: 16, height: 20 }
      : { x: at.x - 10, y: at.y, width: 20, height: 16 },
    textBox: { x: start, y: baseline.y - 12, width: markWidth, height: 16 },
  };
}
