import type { Known } from './derive.ts';
import { placeOf, rearranged, relation, term, times, type Relation, type Sign } from './relation.ts';

/** What a quantity equals by a rule of sameness: another one, or another one the other way round. */
interface Same {
  readonly rule: Relation['rule'];
  readonly about: readonly string[];
  readonly other: string;
  readonly sign: Sign;
}

/** How a quantity was found to be the same as another; undefined where it was found in another way. */
function sameAs(name: string, known: ReadonlyMap<string, Known>): Same | undefined {
  const by = known.get(name)?.by;
  // What is the same only while nothing flows elsewhere stays a step that says so.
  if (!by?.rule.startsWith('same') || by.idle !== undefined) return undefined;
  const [only, ...others] = rearranged(by, name)?.right ?? [];
  if (!only || others.length > 0) return undefined;
  return { rule: by.rule, about: by.about, other: only.name, sign: only.sign };
}

/** What something equals by way of another. */
function beyond(same: Same, next: Same): Same {
  const passed = placeOf(same.other);
  const about = [...new Set([...same.about, ...next.about])].filter((id) => id !== passed);
  return { ...next, about, sign: times(same.sign, next.sign) };
}

/**
 * The same findings, where what is the same as something that is itself the same as a third is so at once: A1 and R1 in one path have
 * one current, whatever stands between them.
 */
export function direct(known: ReadonlyMap<string, Known>): ReadonlyMap<string, Known> {
  const straight = new Map(known);
  for (const [name, way] of known) {
    let same = sameAs(name, known);
    if (!same) continue;
    for (let next = sameAs(same.other, known); next?.rule === same.rule; next = sameAs(same.other, known))
      same = beyond(same, next);
    const by = relation(same.rule, 'sum', same.about, name, term(same.other, same.sign));
    straight.set(name, { ...way, by, uses: [same.other] });
  }
  return straight;
}
