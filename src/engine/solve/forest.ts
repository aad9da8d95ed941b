import type { Branch, Graph, Node } from './graph.ts';

/** The node that stands for all the nodes that conductors join to this one (union–find, paths halved). */
export function pieceOf(node: Node): Node {
  let at = node;
  while (at.piece) at = at.piece = at.piece.piece ?? at.piece;
  return at;
}

/** A branch as part of a loop; `along` where the loop runs from its tail to its head. */
export interface Step {
  readonly branch: Branch;
  readonly along: boolean;
}

/** The loop that a chord closes: along itself, then through the forest from its head back to its tail. */
export function loopOf(chord: Branch): Step[] {
  const onwards: Step[] = [{ branch: chord, along: true }];
  const back: Step[] = [];
  let { head, tail } = chord;
  while (head !== tail) {
    const isAhead = head.depth > tail.depth;
    const { up } = isAhead ? head : tail;
    if (!up) break;
    const { branch, node } = up;
    (isAhead ? onwards : back).push({ branch, along: (isAhead ? branch.head : branch.tail) === node });
    if (isAhead) head = node;
    else tail = node;
  }
  return onwards.concat(back.reverse());
}

/**
 * Grows the spanning forest of the smallest resistances (Kruskal 1956), the piece of `ground` first, and finds the loops. With the
 * smallest resistances in the forest no loop's own resistance is lost beside what it shares with others, whatever the spread.
 */
export function grow(
  branches: readonly Branch[],
  ground: Node | undefined,
  all: Iterable<Node>,
): Pick<Graph, 'nodes' | 'chords' | 'slack'> {
  const chords: Branch[] = [];
  const slack: Branch[] = [];
  const nodes: Node[] = [];
  for (const branch of branches.slice().sort((a, b) => a.rank - b.rank)) {
    const tail = pieceOf(branch.tail);
    const head = pieceOf(branch.head);
    if (tail !== head) {
      tail.piece = head;
      branch.tail.twigs.push(branch);
      branch.head.twigs.push(branch);
    } else (branch.ohms ? chords : slack).push(branch);
  }
  const place = (node: Node): void => {
    if (node.place < 0) node.place = nodes.push(node) - 1;
  };
  const plant = (root: Node): void => {
    let next = nodes.length;
    place(root);
    for (let node = nodes[next]; node; node = nodes[++next]) {
      for (const branch of node.twigs) {
        const child = branch.tail === node ? branch.head : branch.tail;
        if (child.place >= 0) continue;
        child.up = { branch, node };
        child.depth = node.depth + 1;
        place(child);
      }
    }
  };
  if (ground) plant(ground);
  for (const node of all) plant(node);
  chords.forEach((chord, row) => {
    for (const { branch, along } of loopOf(chord)) branch.loops.push({ row, along });
  });
  return { nodes, chords, slack };
}
