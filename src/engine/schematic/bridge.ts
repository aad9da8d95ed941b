import { turnedRound, type Piece, type Tree } from '../topology/index.ts';

/** A bridge: two branches of two parts each, whose middles another part joins. */
export interface Bridge {
  /** What closes it, run through to where the branches begin. */
  readonly closing: Tree;
  readonly branches: readonly (readonly [Tree, Tree])[];
  /** From the middle of the first branch to that of the second. */
  readonly across: Tree;
}

/** The bridge that a piece is; undefined where it is anything else. */
export function bridgeOf({ parts }: Piece): Bridge | undefined {
  const [first, ...others] = parts;
  if (!first || others.length !== 5) return undefined;
  const closing = turnedRound(first);
  const [begin, end] = [closing.to, closing.from];
  const from = (part: Tree, node: string): Tree => (part.from === node ? part : turnedRound(part));
  const touches = (part: Tree, node: string): boolean => part.from === node || part.to === node;
  const branches = others
    .filter((part) => touches(part, begin))
    .flatMap((part): (readonly [Tree, Tree])[] => {
      const head = from(part, begin);
      const tail = others.find((each) => touches(each, head.to) && touches(each, end));
      return tail ? [[head, from(tail, head.to)]] : [];
    });
  const across = others.find((part) => !touches(part, begin) && !touches(part, end));
  const [one] = branches;
  return one && across && branches.length === 2
    ? { closing, branches, across: from(across, one[0].to) }
    : undefined;
}
