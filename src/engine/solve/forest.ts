import type { Branch, Graph, Node } from './graph.ts';

/** The node that stands for all the nodes that conductors join to this one (union–find, paths halved). */
export function pieceOf(node: Node): Node {
  let at = node;
  while (at.piece) {
    at.piece = at.piece.piece ?? at.piece;
    at = at.piece;
  }
  return at;
}

/**
 * Goes round the loop that a chord closes, along the forest from its head back to its tail, as two arms that meet: one onwards
 * from its head, one back from its tail. `along` says whether the loop runs from the branch's tail to its head.
 */
export function goRound(
  chord: Branch,
  visit: (branch: Branch, along: boolean, onwards: boolean) => void,
): void {
  let { head, tail } = chord;
  while (head !== tail) {
    const onwards = head.depth > tail.depth;
    const lower = onwards ? head : tail;
    const { up } = lower;
    if (!up) return;
    visit(up.branch, (onwards ? up.branch.tail : up.branch.head) === lower, onwards);
    if (onwards) head = up.node;
    else tail = up.node;
  }
}

/** Puts the nodes of a piece in order, each after the node above it. */
function plant(root: Node, nodes: Node[]): void {
  if (root.place >= 0) return;
  let next = nodes.length;
  root.place = nodes.push(root) - 1;
  for (let node: Node | undefined = root; node; node = nodes[++next]) {
    for (const branch of node.twigs) {
      const child = branch.tail === node ? branch.head : branch.tail;
      if (child.place >= 0) continue;
      child.up = { branch, node };
      child.depth = node.depth + 1;
      child.place = nodes.push(child) - 1;
    }
  }
}

/** Wires first, then ideal supplies, then by resistance. */
function rank({ component, resistance }: Branch): number {
  return resistance || (component.kind === 'supply' ? -1 : -2);
}

/**
 * Grows the spanning forest of the smallest resistances (Kruskal 1956), rooted at `ground`, and finds the loops. With the
 * smallest resistances in the forest no loop's own resistance is lost beside what it shares with others, whatever the spread.
 */
export function grow(
  branches: readonly Branch[],
  ground: Node | undefined,
  all: Iterable<Node>,
): Pick<Graph, 'nodes' | 'chords' | 'slack'> {
  const chords: Branch[] = [];
  const slack: Branch[] = [];
  for (const branch of [...branches].sort((a, b) => rank(a) - rank(b))) {
    const [tail, head] = [pieceOf(branch.tail), pieceOf(branch.head)];
    if (tail !== head) {
      tail.piece = head;
      branch.tail.twigs.push(branch);
      branch.head.twigs.push(branch);
    } else if (branch.ohms) chords.push(branch);
    else slack.push(branch);
  }
  const nodes: Node[] = [];
  if (ground) plant(ground, nodes);
  for (const node of all) plant(node, nodes);
  chords.forEach((chord, k) => {
    chord.loops.push(k);
    goRound(chord, (branch, along) => branch.loops.push(along ? k : ~k));
  });
  return { nodes, chords, slack };
}
