import type { Branch, Graph, Node } from './graph.ts';

/** The node that stands for all the nodes that conductors join to this one (union–find, paths halved). */
export function pieceOf(node: Node): Node {
  let at = node;
  while (at.piece) at = at.piece = at.piece.piece ?? at.piece;
  return at;
}

/**
 * Goes round the loop that a chord closes: along itself, then through the forest from its head back to its tail, on two arms that
 * meet: one onwards from its head, one back from its tail. `along` says whether the loop runs from a branch's tail to its head.
 */
export function goRound(
  chord: Branch,
  visit: (branch: Branch, along: boolean, isOnwards: boolean) => void,
): void {
  visit(chord, true, true);
  let { head, tail } = chord;
  while (head !== tail) {
    const isOnwards = head.depth > tail.depth;
    const { up } = isOnwards ? head : tail;
    if (!up) return;
    visit(up.branch, (isOnwards ? up.branch.head : up.branch.tail) === up.node, isOnwards);
    if (isOnwards) head = up.node;
    else tail = up.node;
  }
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
    goRound(chord, ({ loops }, along) => loops.push({ row, along }));
  });
  return { nodes, chords, slack };
}
