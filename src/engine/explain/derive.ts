import { evaluate } from './evaluate.ts';
import { Heap } from './heap.ts';
import type { Interval } from './interval.ts';
import { namesOf, rearranged, type Relation } from './relation.ts';

/** A quantity found: by which relation, from which quantities, in at most how many steps. */
export interface Known extends Interval {
  readonly cost: number;
  /** Absent where it is given. */
  readonly by?: Relation;
  readonly uses: readonly string[];
}

/** The relations that each quantity stands in. */
export function touching(relations: readonly Relation[]): ReadonlyMap<string, readonly Relation[]> {
  const at = new Map<string, Relation[]>();
  for (const relation of relations)
    for (const name of namesOf(relation)) {
      const here = at.get(name);
      if (here) here.push(relation);
      else at.set(name, [relation]);
    }
  return at;
}

/** What a relation makes of a quantity, the others known. */
export function valueOf(
  relation: Relation,
  name: string,
  known: ReadonlyMap<string, Interval>,
): Interval | undefined {
  const turned = rearranged(relation, name);
  if (!turned?.right.every((one) => known.has(one.name))) return undefined;
  if (turned.idle !== undefined && !known.get(turned.idle)?.value.equals(0)) return undefined;
  return evaluate(turned, (one) => {
    const value = known.get(one);
    if (!value) throw new RangeError(`${one} is not known`);
    return value;
  });
}

/** Everything that follows from what is given, each by the cheapest way: Knuth's generalisation of Dijkstra's algorithm (1977, from memory). */
export function follow(
  relations: readonly Relation[],
  given: ReadonlyMap<string, Interval>,
): ReadonlyMap<string, Known> {
  const known = new Map<string, Known>();
  const best = new Map<string, Known>();
  const waiting = new Heap<readonly [name: string, way: Known]>();
  const found = (name: string, way: Known): void => {
    best.set(name, way);
    waiting.push([name, way], way.cost);
  };
  for (const [name, value] of given) found(name, { ...value, cost: 0, uses: [] });
  for (const by of relations) {
    const value = namesOf(by).length === 1 && !best.has(by.left) && valueOf(by, by.left, known);
    if (value) found(by.left, { ...value, cost: 1, by, uses: [] });
  }
  const at = touching(relations);
  const left = new Map(relations.map((one) => [one, namesOf(one).length]));
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const [settled, way] = next;
    if (known.has(settled)) continue;
    known.set(settled, way);
    for (const by of at.get(settled) ?? []) {
      const missing = (left.get(by) ?? 0) - 1;
      left.set(by, missing);
      if (missing !== 1) continue;
      const names = namesOf(by);
      const find = names.find((name) => !known.has(name));
      if (find === undefined) continue;
      const uses = names.filter((name) => name !== find);
      const cost = uses.reduce((sum, name) => sum + (known.get(name)?.cost ?? 0), by.cost ?? 1);
      if (cost >= (best.get(find)?.cost ?? Infinity)) continue;
      const value = valueOf(by, find, known);
      if (value) found(find, { ...value, cost, by, uses });
    }
  }
  return known;
}

/** The quantities on the way to some, each once, each after those that it uses; what is given is not among them. */
export function wayTo(find: readonly string[], known: ReadonlyMap<string, Known>): readonly string[] {
  const order = new Set<string>();
  const visit = (name: string): void => {
    const way = known.get(name);
    if (!way?.by || order.has(name)) return;
    way.uses.forEach(visit);
    order.add(name);
  };
  find.forEach(visit);
  return [...order];
}

/** What is given that some quantities follow from. */
export function roots(names: readonly string[], known: ReadonlyMap<string, Known>): readonly string[] {
  const seen = new Set(names);
  for (const name of seen) for (const used of known.get(name)?.uses ?? []) seen.add(used);
  return [...seen].filter((name) => !known.get(name)?.by);
}
