import type { Fraction } from '../quantity/index.ts';
import { evaluate, namesOf, rearranged, type Relation } from './relation.ts';

/** A quantity found: by which relation, from which quantities, in at most how many steps. */
export interface Known {
  readonly value: Fraction;
  readonly cost: number;
  /** Absent where it is given. */
  readonly by?: Relation;
  readonly uses: readonly string[];
}

/** Everything that follows from what is given, each by the cheapest way: Knuth's generalisation of Dijkstra's algorithm. */
export function follow(
  relations: readonly Relation[],
  given: ReadonlyMap<string, Fraction>,
): ReadonlyMap<string, Known> {
  const known = new Map<string, Known>();
  const open = new Map<string, Known>(
    [...given].map(([name, value]) => [name, { value, cost: 0, uses: [] }]),
  );
  const touching = new Map<string, Relation[]>();
  for (const relation of relations)
    for (const name of namesOf(relation)) touching.set(name, [...(touching.get(name) ?? []), relation]);
  for (;;) {
    const [next] = [...open].sort(([, a], [, b]) => a.cost - b.cost);
    if (!next) return known;
    const [settled, way] = next;
    open.delete(settled);
    known.set(settled, way);
    for (const by of touching.get(settled) ?? []) {
      const missing = namesOf(by).filter((name) => !known.has(name));
      const [find] = missing;
      if (find === undefined || missing.length > 1) continue;
      const uses = namesOf(by).filter((name) => name !== find);
      const cost = uses.reduce((sum, name) => sum + (known.get(name)?.cost ?? 0), 1);
      if (cost >= (open.get(find)?.cost ?? Infinity)) continue;
      const value = valueOf(by, find, known);
      if (value) open.set(find, { value, cost, by, uses });
    }
  }
}

/** What a relation makes of a quantity, the others known. */
export function valueOf(
  relation: Relation,
  name: string,
  known: ReadonlyMap<string, Known>,
): Fraction | undefined {
  const others = namesOf(relation).filter((one) => one !== name);
  const values = new Map(
    others.flatMap((one) => known.get(one)?.value ?? []).map((value, k) => [others[k], value]),
  );
  if (values.size < new Set(others).size) return undefined;
  return evaluate(rearranged(relation, name), (one) => {
    const value = values.get(one);
    if (!value) throw new RangeError(`${one} is not known`);
    return value;
  });
}

/** The quantities on the way to one, each once, each after those that it uses; what is given is not among them. */
export function wayTo(find: string, known: ReadonlyMap<string, Known>): readonly string[] {
  const order = new Set<string>();
  const visit = (name: string): void => {
    const way = known.get(name);
    if (!way?.by || order.has(name)) return;
    way.uses.forEach(visit);
    order.add(name);
  };
  visit(find);
  return [...order];
}

/** What is given that a quantity follows from. */
export function roots(name: string, known: ReadonlyMap<string, Known>): readonly string[] {
  const way = known.get(name);
  return way?.by ? [...new Set(way.uses.flatMap((one) => roots(one, known)))] : [name];
}
