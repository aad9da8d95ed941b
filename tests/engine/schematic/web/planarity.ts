import { blocks } from '../../../../src/engine/topology/blocks.ts';

/** A join of two vertices of a simple graph. */
export type Pair = readonly [number, number];

const key = ([a, b]: Pair): string => `${Math.min(a, b)} ${Math.max(a, b)}`;

const neighbours = (pairs: readonly Pair[]): ReadonlyMap<number, readonly number[]> => {
  const at = new Map<number, number[]>();
  for (const [a, b] of pairs) {
    at.set(a, [...(at.get(a) ?? []), b]);
    at.set(b, [...(at.get(b) ?? []), a]);
  }
  return at;
};

/** A shortest way between two vertices, without one edge and without some vertices. */
function way(
  pairs: readonly Pair[],
  from: number,
  to: number,
  without: ReadonlySet<number>,
  but = '',
): number[] {
  const at = neighbours(pairs.filter((pair) => key(pair) !== but));
  const ways = [[from]];
  const seen = new Set([from, ...without]);
  for (const one of ways) {
    for (const next of at.get(one.at(-1) ?? -1) ?? []) {
      if (next === to) return [...one, to];
      if (seen.has(next)) continue;
      seen.add(next);
      ways.push([...one, next]);
    }
  }
  return [];
}

/** What hangs together of a block without a cycle of it. */
function bridgesOf(pairs: readonly Pair[], cycle: readonly number[]): Pair[][] {
  const on = new Set(cycle);
  const sides = new Set(cycle.map((vertex, i) => key([vertex, cycle.at(i - 1) ?? -1])));
  const rest = pairs.filter((pair) => !sides.has(key(pair)));
  const group = new Map<number, number>();
  const at = neighbours(rest);
  for (const start of at.keys()) {
    if (on.has(start) || group.has(start)) continue;
    const reached = new Set([start]);
    for (const vertex of reached) {
      group.set(vertex, start);
      for (const next of at.get(vertex) ?? []) if (!on.has(next)) reached.add(next);
    }
  }
  const bridges = new Map<string, Pair[]>();
  for (const pair of rest) {
    const name = `${group.get(pair[0]) ?? group.get(pair[1]) ?? key(pair)}`;
    bridges.set(name, [...(bridges.get(name) ?? []), pair]);
  }
  return [...bridges.values()];
}

/** The places on a cycle where a bridge is attached. */
const attached = (bridge: readonly Pair[], cycle: readonly number[]): number[] =>
  cycle.flatMap((vertex, place) => (bridge.flat().includes(vertex) ? [place] : []));

/** Whether two bridges cannot lie on the same side of their cycle. */
function conflict(a: readonly number[], b: readonly number[]): boolean {
  return !a.some((start, i) => {
    const end = a[(i + 1) % a.length] ?? start;
    return b.every((place) =>
      start < end ? start <= place && place <= end : place >= start || place <= end,
    );
  });
}

function isBlockPlanar(pairs: readonly Pair[], given?: readonly number[]): boolean {
  const [first] = pairs;
  if (!first || pairs.length < 9) return true;
  const cycle = given ?? way(pairs, first[0], first[1], new Set(), key(first));
  const bridges = bridgesOf(pairs, cycle);
  const places = bridges.map((bridge) => attached(bridge, cycle));
  const [only] = bridges;
  if (!only) return true;
  if (bridges.length === 1) {
    // A path.
    if (places[0]?.length === 2 && new Set(only.flat()).size === only.length + 1) return true;
    // Another cycle, through the bridge, has more than one.
    const [one = 0, other = 0] = places[0] ?? [];
    const [from = -1, to = -1] = [cycle[one], cycle[other]];
    const others = new Set(cycle.filter((vertex) => vertex !== to && vertex !== from));
    const through = way(only, from, to, others).slice(1, -1);
    const arc = [...cycle.slice(other), ...cycle.slice(0, one + 1)];
    return isBlockPlanar(pairs, [...arc, ...through]);
  }
  const side = new Map<number, number>();
  for (const start of bridges.keys()) {
    if (!side.has(start)) side.set(start, 0);
    const pending = new Set([start]);
    for (const bridge of pending) {
      for (const other of bridges.keys()) {
        if (other === bridge || !conflict(places[bridge] ?? [], places[other] ?? [])) continue;
        if (side.get(other) === side.get(bridge)) return false;
        if (side.has(other)) continue;
        side.set(other, 1 - (side.get(bridge) ?? 0));
        pending.add(other);
      }
    }
  }
  const sides = cycle.map((vertex, i): Pair => [vertex, cycle.at(i - 1) ?? -1]);
  return bridges.every((bridge) => bridge.length === 1 || isBlockPlanar([...sides, ...bridge]));
}

/**
 * Whether a graph lies in a plane, found otherwise than the drawing does: by the bridges of a cycle, which take its two sides. Method:
 * L. Auslander and S. V. Parter, Journal of Mathematics and Mechanics 10 (1961) 517–523 (from memory).
 */
export function isPlanar(pairs: readonly Pair[]): boolean {
  const simple = [...new Map(pairs.map((pair) => [key(pair), pair])).values()];
  const edges = simple.map(([from, to], i) => ({ id: `${i}`, from: `${from}`, to: `${to}` }));
  return blocks(edges).every((block) => {
    const own = block.edges.map(({ id }) => simple[Number(id)]).flatMap((pair) => (pair ? [pair] : []));
    const count = new Set(own.flat()).size;
    return count < 5 || (own.length <= 3 * count - 6 && isBlockPlanar(own));
  });
}
