import { placeOf, relation, term, times, type Relation, type Sign, type Term } from './relation.ts';

/** What a quantity is the same as, each with its sign: itself among them. */
type Class = ReadonlyMap<string, Sign>;

const alike = ['same current', 'same p.d.'] as const;
const adding: readonly Relation['rule'][] = ['currents add', 'currents at a junction', 'p.d.s add'];

/** Of so many variants of one sum no more are made. */
const mostVariants = 64;

/** The components that a quantity is of. */
const idsOf = (name: string): readonly string[] =>
  placeOf(name)
    .split(/[+∥()]+/)
    .filter(Boolean);

/** What every quantity of a rule of sameness is the same as at one step. */
function neighbours(relations: readonly Relation[], rule: Relation['rule']): ReadonlyMap<string, Class> {
  const near = new Map<string, Map<string, Sign>>();
  for (const one of relations) {
    const [only, ...others] = one.right;
    if (one.rule !== rule || !only || others.length > 0 || one.idle !== undefined) continue;
    near.set(one.left, (near.get(one.left) ?? new Map<string, Sign>()).set(only.name, only.sign));
    near.set(only.name, (near.get(only.name) ?? new Map<string, Sign>()).set(one.left, only.sign));
  }
  return near;
}

function classOf(name: string, near: ReadonlyMap<string, Class>): Class {
  const reached = new Map<string, Sign>([[name, 1]]);
  for (const [here, sign] of reached)
    for (const [next, way] of near.get(here) ?? [])
      if (!reached.has(next)) reached.set(next, times(sign, way));
  return reached;
}

/** A sum called in every way by what is named: each of its quantities by itself, or by another that it is the same as. */
function variants(sum: Relation, others: (name: string) => readonly Term[]): readonly Relation[] {
  const [left, ...right] = [term(sum.left), ...sum.right].map((one) => [
    one,
    ...others(one.name).map(({ name, sign }) => term(name, times(sign, one.sign))),
  ]);
  const count = right.reduce((product, one) => product * one.length, left?.length ?? 0);
  if (count === 1 || count > mostVariants) return [];
  const rights = right.reduce<readonly (readonly Term[])[]>(
    (all, choices) => all.flatMap((some) => choices.map((one) => [...some, one])),
    [[]],
  );
  return (left ?? []).flatMap(({ name, sign }) =>
    rights.map((some) => ({
      ...sum,
      left: name,
      right: some.map((one) => ({ ...one, sign: times(one.sign, sign) })),
    })),
  );
}

/**
 * What is the same as something that is given or asked, and so at once: A1 and R1 in one path have one current, whatever stands between
 * them. And what adds up, called by what is given or asked: the readings of two meters in branches are that of the one in the line.
 */
export function sameAtOnce(relations: readonly Relation[], named: readonly string[]): readonly Relation[] {
  const same = alike.flatMap((rule) => {
    const near = neighbours(relations, rule);
    return named.map((name) => ({ rule, name, near: near.get(name), all: classOf(name, near) }));
  });
  const pairs = same.flatMap(({ rule, name, near, all }) =>
    [...all]
      .filter(([other]) => other !== name && !near?.has(other) && !other.endsWith('_total'))
      .map(([other, sign]) =>
        relation(rule, 'sum', [...idsOf(other), ...idsOf(name)], other, term(name, sign)),
      ),
  );
  const others = (one: string): readonly Term[] =>
    same.flatMap(({ name, all }) => {
      const sign = all.get(one);
      return sign && name !== one ? [term(name, sign)] : [];
    });
  const sums = relations
    .filter(({ rule }) => adding.includes(rule))
    .flatMap((sum) => variants(sum, others).slice(1));
  return [...pairs, ...sums];
}
