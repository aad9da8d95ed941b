import type { Part } from './reduce.ts';
import type { Tree } from './tree.ts';

/**
 * Appends the tree of a part, run through from the node `start`, to `trees`, which are the parts of a series where `kind`
 * says so: series in series is one series. Without recursion, so that any depth will do.
 */
export function orient(whole: Part, start: string, trees: Tree[], kind?: 'series'): void {
  const pending: { part: Part; from: string; into: Tree[]; kind: Part['kind'] | undefined }[] = [
    { part: whole, from: start, into: trees, kind },
  ];
  for (let next = pending.pop(); next; next = pending.pop()) {
    const { part, from, into } = next;
    const reversed = from !== part.from;
    const to = reversed ? part.from : part.to;
    if (part.kind === 'component') {
      into.push({ kind: 'component', id: part.id, reversed, from, to });
      continue;
    }
    const parts = part.kind === next.kind ? into : [];
    if (parts !== into) into.push({ kind: part.kind, parts, from, to });
    // What is pushed last is run through first.
    if (part.kind === 'parallel') {
      const branches = part.parts.toSorted((a, b) => b.first - a.first);
      for (const branch of branches) pending.push({ part: branch, from, into: parts, kind: 'parallel' });
    } else {
      let node = to;
      for (const piece of reversed ? part.parts : part.parts.toReversed()) {
        node = piece.from === node ? piece.to : piece.from;
        pending.push({ part: piece, from: node, into: parts, kind: 'series' });
      }
    }
  }
}
