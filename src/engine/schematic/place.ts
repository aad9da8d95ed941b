import type { Single } from '../topology/index.ts';
import { forkDrawer, forkLength, padOf, quantitiesDrawer, wiperDrawer, type Block } from './block.ts';
import type { Share, Turn } from './drawing.ts';
import type { Fork } from './fork/index.ts';
import { reach, turned } from './glyph.ts';
import { labelsAt } from './label.ts';
import { markAt, markedNode } from './zero-mark.ts';
import { boxOn, onwards, pointOn, wire, type Line } from './page.ts';

/** From the middle of a symbol to where a wire across it joins, along the line. */
const joint = 30;
/** From where it joins to the arrow of the component's own current, which is not that of the two. */
const afterJoint = 14;

/** The wire across a component from one point of its line to another, on the side away from its label. */
function placeBridge(on: Line, first: number, last: number, half: number, share: Share): void {
  const { upright, left } = on.measure;
  const aside = upright && !left ? -half - 6 : half + 6;
  const corners = [
    pointOn(on, first),
    pointOn(on, first, aside),
    pointOn(on, last, aside),
    pointOn(on, last),
  ];
  corners.slice(1).forEach((to, i) => {
    on.page.pieces.push({ node: share.id, from: corners[i] ?? to, to, carries: [share] });
  });
}

function placeComponent(block: Block, { id, from, to, reversed }: Single, on: Line, length: number): void {
  const { page, measure } = on;
  const { before, after, lead } = block;
  const { glyph, condition, mark } = measure.part(id);
  if (mark) {
    page.marks.push(markAt(markedNode(from), pointOn(on, Math.round(length / 2)), measure));
    wire(on, from, 0, length);
    return;
  }
  const { half, lines, filled, letter, polar, ends } = glyph;
  const middle = Math.round((length + (lead?.length ?? 0)) / 2);
  const [first, last] = [middle - reach, middle + reach];
  const at = pointOn(on, middle);
  const turn = ((measure.upright ? 90 : 0) + (on.way > 0 === reversed ? 180 : 0)) as Turn;
  // What has no front shows its upper side above, or away from its label.
  const shown = polar ? turn : !measure.upright ? 0 : measure.left ? 90 : 270;
  page.symbols.push({
    id,
    at,
    turn,
    path: turned(lines, shown),
    filled: turned(filled, shown),
    letter,
    ...(condition && { condition }),
    ends: turned(ends, shown),
    box: boxOn(on, first, last, half, half),
    hit: boxOn(on, first, last, before, after),
  });
  page.labels.push(...labelsAt(id, at, measure));
  const [own, aside] = block.carries;
  const [begin, end] = aside
    ? [middle - (lead?.away ? lead.away + afterJoint : joint), middle + joint]
    : [0, length];
  const through = own && aside ? { ...on, carries: [own] } : on;
  wire(on, from, 0, begin);
  wire(through, from, begin, first);
  page.pieces.push({ from: pointOn(on, first), to: pointOn(on, last), carries: through.carries });
  wire(through, to, last, end);
  wire(on, to, end, length);
  if (aside) placeBridge(on, begin, end, half, aside);
  quantitiesDrawer()?.place(block, measure.part(id), on, middle);
}

/** One side of a parallel group: the wire along the ends of its branches, which shares its current out or gathers it. */
export function placeRail(
  branches: readonly Block[],
  on: Line,
  along: number,
  node: string,
  out: boolean,
): void {
  for (const side of [-1, 1]) {
    const outwards = branches
      .filter(({ offset }) => offset * side > 0)
      .sort((p, q) => (p.offset - q.offset) * side);
    let carries: readonly Share[] = [];
    for (let next = outwards.pop(); next; next = outwards.pop()) {
      carries = [...next.carries, ...carries];
      const [inner, outer] = [pointOn(on, along, outwards.at(-1)?.offset), pointOn(on, along, next.offset)];
      on.page.pieces.push({
        node,
        carries,
        ...(out ? { from: inner, to: outer } : { from: outer, to: inner }),
      });
    }
  }
}

/**
 * Places a block on a line, over a length of at least the block's own, with even spaces between its parts. A group that takes
 * the `whole` line has its junctions at the very ends.
 */
export function place(block: Block, on: Line, length: number, whole = false): void {
  const { kind, single, from, to, parts } = block;
  if (single) placeComponent(block, single, on, length);
  else if (block.tap) wiperDrawer()?.place(block, block.tap, on, length);
  else if (kind === 'parallel') {
    const { start, end } = block;
    const space = whole ? 0 : Math.round((length - block.length) / 2);
    const edge = (fork: Fork | undefined): number => (fork ? forkLength : whole ? 0 : padOf(block));
    const [first, last] = [space + edge(start), length - space - edge(end)];
    const forks = forkDrawer();
    if (start) forks?.place(start, block, from, on, first, true);
    else {
      wire(on, from, 0, first);
      placeRail(parts, on, first, from, true);
    }
    for (const part of parts) {
      place(
        part,
        { ...onwards(on, first), cross: on.cross + part.offset, carries: part.carries },
        last - first,
      );
    }
    if (end) {
      const back: Line = { ...on, start: on.start + on.way * length, way: on.way > 0 ? -1 : 1 };
      forks?.place(end, block, to, back, length - last, false);
    } else {
      placeRail(parts, on, last, to, false);
      wire(on, to, last, length);
    }
  } else if (parts.length === 0) wire(on, from, 0, length);
  else {
    const space = (length - block.length) / parts.length;
    let [along, ideal] = [0, 0];
    for (const part of parts) {
      ideal += part.length + space;
      const end = Math.round(ideal);
      place(part, onwards(on, along), end - along, whole);
      along = end;
    }
  }
}
