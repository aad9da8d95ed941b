import { touching, valueOf, wayTo, type Known } from './derive.ts';
import { namesOf, type Relation } from './relation.ts';

/** So many choices are looked at in all: enough for every circuit of six components. */
const mostLooks = 20_000;
/** Longer ways are left as they are. */
const mostSteps = 14;

type Choice = Pick<Known, 'by' | 'uses'> & { readonly by: Relation };

const costOf = ({ cost = 1 }: Pick<Relation, 'cost'>): number => cost;

/**
 * The same quantity by a way with fewer steps, if there is one: `follow` counts a step as often as it is used. Every way is tried from
 * the end backwards, none in a circle, for one step less and again, until there is none or too many have been looked at.
 */
export function shorter(
  find: string,
  known: ReadonlyMap<string, Known>,
  relations: readonly Relation[],
): ReadonlyMap<string, Known> {
  const way = wayTo([find], known);
  if (way.length < 3 || way.length > mostSteps) return known;
  const at = touching(relations);
  const options = new Map<string, readonly Choice[]>();
  const choices = (name: string): readonly Choice[] => {
    const found =
      options.get(name) ??
      (at.get(name) ?? [])
        .filter((by) => namesOf(by).every((one) => known.has(one)) && valueOf(by, name, known))
        .map((by) => ({ by, uses: namesOf(by).filter((one) => one !== name) }));
    options.set(name, found);
    return found;
  };
  const isGiven = (name: string): boolean => !known.get(name)?.by;
  const chosen = new Map<string, Choice>();
  let looks = 0;
  const leadsTo = (from: string, to: string): boolean =>
    from === to || (chosen.get(from)?.uses ?? []).some((name) => leadsTo(name, to));
  /** Finds ways to all that is open with so much left to spend. */
  const settle = ([name, ...rest]: readonly string[], left: number): boolean => {
    if (name === undefined) return left >= 0;
    if (1 + rest.length > left) return false;
    return choices(name).some((choice) => {
      looks += 1;
      if (looks > mostLooks) return false;
      const uses = choice.uses.filter((one) => !isGiven(one));
      if (uses.some((one) => leadsTo(one, name))) return false;
      const more = uses.filter((one) => !chosen.has(one) && !rest.includes(one));
      chosen.set(name, choice);
      if (settle([...rest, ...more], left - costOf(choice.by))) return true;
      chosen.delete(name);
      return false;
    });
  };
  const spent = (names: readonly string[], by: (name: string) => Relation | undefined): number =>
    names.reduce((sum, name) => sum + costOf(by(name) ?? { cost: 0 }), 0);
  let best = known;
  for (let left = spent(way, (name) => known.get(name)?.by) - 1; settle([find], left);) {
    const next = new Map([...known].filter(([, { by }]) => !by));
    const learn = (name: string): void => {
      const choice = chosen.get(name);
      if (!choice || next.has(name)) return;
      choice.uses.forEach(learn);
      const value = valueOf(choice.by, name, next);
      if (value) next.set(name, { ...value, ...choice, cost: 0 });
    };
    learn(find);
    if (!next.has(find)) return best;
    best = next;
    left = spent([...chosen.keys()], (name) => chosen.get(name)?.by) - 1;
    chosen.clear();
  }
  return best;
}
