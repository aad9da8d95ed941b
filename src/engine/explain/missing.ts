import { touching } from './derive.ts';
import { namesOf, rearranged, type Relation } from './relation.ts';

/** Whether a relation gives one of its quantities once the others are known; what is known to be 0 cannot be divided by. */
function gives(relation: Relation, name: string, zeros: ReadonlySet<string>): boolean {
  const turned = rearranged(relation, name);
  if (relation.form === 'balance' && relation.left === name) return false;
  if (turned?.idle !== undefined && !zeros.has(turned.idle)) return false;
  const below = turned?.right.filter(({ power }) => power < 0 || relation.form === 'reciprocals') ?? [];
  return turned !== undefined && !below.some((one) => zeros.has(one.name));
}

/** So often relations are looked at in all, before the search is given up: it has an end in circuits of hundreds of components too. */
const mostLooks = 60_000;

/** The first of some quantities that, if it were known too, would be enough to find another; none where none is, or none is found soon. */
export function missing(
  relations: readonly Relation[],
  known: Iterable<string>,
  zeros: ReadonlySet<string>,
  candidates: readonly string[],
  find: string,
): string | undefined {
  const at = touching(relations);
  const left = new Map(relations.map((one) => [one, namesOf(one).length]));
  const reached = new Set<string>();
  let looks = 0;
  /** Everything that follows from one more quantity; gives back how to forget it again. */
  const learn = (name: string): (() => void) => {
    const found = reached.has(name) ? [] : [name];
    const counted: Relation[] = [];
    for (const one of found) {
      reached.add(one);
      for (const relation of at.get(one) ?? []) {
        looks += 1;
        const open = (left.get(relation) ?? 0) - 1;
        left.set(relation, open);
        counted.push(relation);
        const next = open === 1 && namesOf(relation).find((other) => !reached.has(other));
        if (next && !found.includes(next) && gives(relation, next, zeros)) found.push(next);
      }
    }
    return () => {
      for (const relation of counted) left.set(relation, (left.get(relation) ?? 0) + 1);
      for (const one of found) reached.delete(one);
    };
  };
  for (const name of known) learn(name);
  return candidates.find((name) => {
    if (name === find || reached.has(name) || looks > mostLooks) return false;
    const forget = learn(name);
    const isEnough = reached.has(find);
    forget();
    return isEnough;
  });
}
