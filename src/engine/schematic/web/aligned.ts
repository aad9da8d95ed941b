import type { Share } from '../drawing.ts';
import { keyOf } from '../net.ts';
import type { Piece } from '../page.ts';

/** The same current counted the other way. */
const turned = (shares: readonly Share[]): Share[] =>
  shares.map(({ id, sign }) => ({ id, sign: -sign as Share['sign'] }));

/** Pieces that all run on where only two meet: those that would run against the one before are turned round. */
export function aligned(pieces: readonly Piece[]): Piece[] {
  const at = new Map<string, Piece[]>();
  for (const piece of pieces) {
    for (const end of [piece.from, piece.to]) at.set(keyOf(end), [...(at.get(keyOf(end)) ?? []), piece]);
  }
  const placed = new Map<Piece, Piece>();
  for (const start of pieces) {
    if (placed.has(start)) continue;
    placed.set(start, start);
    const pending = [start];
    for (let piece = pending.pop(); piece; piece = pending.pop()) {
      const { from, to } = placed.get(piece) ?? piece;
      for (const [end, ends] of [
        [from, false],
        [to, true],
      ] as const) {
        const here = at.get(keyOf(end)) ?? [];
        const [next] = here.filter((each) => each !== piece);
        if (here.length !== 2 || !next || placed.has(next)) continue;
        const runsOn = (keyOf(next.from) === keyOf(end)) === ends;
        const { node, carries } = next;
        const back = {
          ...(node !== undefined && { node }),
          from: next.to,
          to: next.from,
          carries: turned(carries),
        };
        placed.set(next, runsOn ? next : back);
        pending.push(next);
      }
    }
  }
  return pieces.map((piece) => placed.get(piece) ?? piece);
}
