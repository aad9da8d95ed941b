import { roots, valueOf, type Known } from './derive.ts';
import { namesOf, type Relation } from './relation.ts';

/** What is given that cannot all be right, the fewest that show it, in the order given; none where all agrees, each reading as near as it was written. */
export function disagreement(
  relations: readonly Relation[],
  known: ReadonlyMap<string, Known>,
  given: Iterable<string>,
): readonly string[] {
  const clashes = relations
    .filter((relation) => {
      const [value, found] = [valueOf(relation, relation.left, known), known.get(relation.left)];
      return value && found && (value.low.compare(found.high) > 0 || value.high.compare(found.low) < 0);
    })
    .map(namesOf);
  const below = [...known].filter(([name, { high }]) => /^[Rr]_/.test(name) && high.compare(0) < 0);
  const fewest = [...clashes, ...below.map(([name]) => [name])]
    .map((names) => roots(names, known))
    .reduce<readonly string[]>((a, b) => (a.length > 0 && a.length <= b.length ? a : b), []);
  return [...given].filter((name) => fewest.includes(name));
}
