import type { Edge } from './edge.ts';

/** A part of a circuit while it is being reduced: a component, two parts in series, or any number in parallel. */
export interface Part extends Edge {
  readonly kind: 'component' | 'series' | 'parallel';
  /** The place of its first component among the edges reduced. */
  first: number;
  readonly parts: Part[];
}

/**
 * Series–parallel reduction: joins what is side by side, and what meets where nothing else does, until nothing is.
 * Nodes in `kept` stay. Gives the parts that remain, one if all could be joined. Linear time, no recursion.
 * Method: J. Valdes, R. E. Tarjan and E. L. Lawler, SIAM Journal on Computing 11 (1982) 298–313 (from memory).
 */
export function reduce(edges: readonly Edge[], kept: ReadonlySet<string>): readonly Part[] {
  const joined = new Map<string, Map<string, Part>>();
  const pending: string[] = [];
  const at = (node: string): Map<string, Part> => {
    let parts = joined.get(node);
    if (!parts) joined.set(node, (parts = new Map<string, Part>()));
    return parts;
  };
  const join = (part: Part): void => {
    let whole = at(part.from).get(part.to);
    if (whole?.kind === 'parallel') whole.parts.push(part);
    else whole = whole ? { ...whole, kind: 'parallel', parts: [whole, part] } : part;
    whole.first = Math.min(whole.first, part.first);
    at(part.from).set(part.to, whole);
    at(part.to).set(part.from, whole);
    pending.push(part.from, part.to);
  };
  edges.forEach(({ id, from, to }, first) => {
    join({ kind: 'component', id, from, to, first, parts: [] });
  });
  for (let node = pending.pop(); node !== undefined; node = pending.pop()) {
    if (kept.has(node) || at(node).size !== 2) continue;
    const [here, there] = at(node);
    if (!here || !there) continue;
    joined.delete(node);
    at(here[0]).delete(node);
    at(there[0]).delete(node);
    const first = Math.min(here[1].first, there[1].first);
    join({ kind: 'series', id: here[1].id, from: here[0], to: there[0], first, parts: [here[1], there[1]] });
  }
  return [...new Set([...joined.values()].flatMap((parts) => [...parts.values()]))].sort(
    (a, b) => a.first - b.first,
  );
}
