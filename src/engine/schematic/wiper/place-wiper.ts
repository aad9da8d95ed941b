import type { Block } from '../block.ts';
import type { Share } from '../drawing.ts';
import { onwards, pointOn, wire, type Line } from '../page.ts';
import { place, placeRail } from '../place.ts';
import { around, type Arm, type Tap } from './tap-block.ts';
import { joint, labelsOf, stem, symbolOf, trackReach, type Way } from './track.ts';

const against = (shares: readonly Share[]): Share[] =>
  shares.map(({ id, sign }) => ({ id, sign: sign === 1 ? -1 : 1 }));

/** The line from what is in series with a part of the track to the contact, or (`way` 1) from there on; `on` begins at the contact. */
function placeTrack({ single, shares, rows }: Arm, way: Way, on: Line, reach: number): void {
  const [own, aside] = shares;
  const along: Line = { ...on, carries: rows[0]?.carries ?? [] };
  const through: Line = { ...on, carries: own && aside ? [own] : along.carries };
  const node = way < 0 ? single.from : single.to;
  const piece = (line: Line, near: number, far: number): void => {
    if (way < 0) wire(line, node, -far, -near);
    else wire(line, node, near, far);
  };
  const begin = aside ? joint : trackReach;
  piece(along, begin, reach);
  piece(through, trackReach, begin);
  const [tip, end] = [pointOn(on, 0), pointOn(on, way * trackReach)];
  on.page.pieces.push({
    ...(way < 0 ? { from: end, to: tip } : { from: tip, to: end }),
    carries: through.carries,
  });
}

/** The wire across a part of the track: it ends at the wire of the contact. */
function placeAside({ shares: [, aside] }: Arm, way: Way, on: Line): void {
  if (!aside) return;
  const corners = [pointOn(on, way * joint), pointOn(on, way * joint, around), pointOn(on, 0, around)];
  const carries = way < 0 ? [aside] : against([aside]);
  corners.slice(1).forEach((to, i) => {
    on.page.pieces.push({ node: aside.id, from: corners[i] ?? to, to, carries });
  });
}

/** The wire of the contact, from the track to the furthest of what it leads to; away from the track is onwards. */
function placeContact({ arms: [before, after], contact }: Tap, on: Line): void {
  const { pieces } = on.page;
  const [comes, goes] = [before, after].map(({ shares }) => shares.slice(0, 1));
  const own = [...(comes ?? []), ...against(goes ?? [])];
  const tail = pointOn(on, 0, stem);
  pieces.push({ from: pointOn(on, 0), to: tail, carries: own });
  pieces.push({ node: contact, from: tail, to: pointOn(on, 0, around), carries: own });
  const led = [
    ...before.rows.slice(1).map(({ offset, carries }) => ({ offset, carries: against(carries) })),
    ...after.rows.slice(1).map(({ offset, carries }) => ({ offset, carries })),
  ];
  let inner = around;
  for (const outer of [...new Set(led.map(({ offset }) => offset))].sort((a, b) => a - b)) {
    const carries = led.filter(({ offset }) => offset >= outer).flatMap((each) => each.carries);
    pieces.push({ node: contact, from: pointOn(on, 0, inner), to: pointOn(on, 0, outer), carries });
    inner = outer;
  }
}

/** Places a potentiometer and what its contact leads to on a line, over a length of at least the block's own. */
export function placeWiper(block: Block, tap: Tap, on: Line, length: number): void {
  const { arms, reach } = tap;
  const [before, after] = arms;
  const contact = before.length + Math.round((length - block.length) / 2);
  const here = onwards(on, contact);
  const sides = [
    { arm: before, way: -1, far: contact },
    { arm: after, way: 1, far: length - contact },
  ] as const;
  for (const { arm, way, far } of sides) {
    const { rows, rest, pad, node } = arm;
    const isFirst = way < 0;
    const edge = isFirst ? pad : length - pad;
    if (isFirst) wire(on, node, 0, pad);
    if (rows.length > 1) placeRail(rows, on, edge, node, isFirst);
    const [track, ...others] = rows;
    const line = (from: number, { offset, carries }: Block): Line => ({
      ...onwards(on, from),
      cross: on.cross + offset,
      carries,
    });
    if (track) place(rest, line(isFirst ? pad : contact + reach, track), far - pad - reach);
    for (const row of others) place(row, line(isFirst ? pad : contact, row), far - pad);
    placeTrack(arm, way, here, reach);
    if (!isFirst) wire(on, node, edge, length);
  }
  placeContact(tap, here);
  for (const { arm, way } of sides) placeAside(arm, way, here);
  on.page.symbols.push(...sides.map(({ arm, way }) => symbolOf(arm.single, way, here, block, reach)));
  on.page.labels.push(...sides.flatMap(({ arm, way }) => labelsOf(arm.single.id, way, here)));
}
