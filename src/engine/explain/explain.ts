import type { Circuit } from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import { solveExact } from '../solve/index.ts';
import { electrical } from '../topology/index.ts';
import { say, type Said } from '../reasons/index.ts';
import { usualCourse, type Course } from '../words/index.ts';
import type { Reasoning } from './codes.ts';
import { follow, roots, valueOf, wayTo, type Known } from './derive.ts';
import type { Derivation, Step } from './derivation.ts';
import { stated } from './given.ts';
import { namesOf, placesOf, rearranged, type Relation } from './relation.ts';
import { relationsOf } from './relations.ts';
import { styleOf, symbol, valueText, written } from './write.ts';

/** A course that leaves out some rules. */
export interface Lesson extends Course {
  readonly without?: readonly Reasoning[];
}

/** What is known and asked. */
export interface Question {
  /** Values in SI units by quantity name; absent: what the circuit's line states and does not hide. */
  readonly given?: Readonly<Record<string, Fraction | number | string>>;
  /** A quantity name; also `W_` energy and `Q_` charge, with the time `t` given. */
  readonly find: string;
  readonly course?: Lesson;
}

/** A step as a class reads it. */
function step(
  gives: string,
  { by, uses, value }: Known,
  known: ReadonlyMap<string, Known>,
  course: Course,
): Step | undefined {
  if (!by) return undefined;
  const style = styleOf(course);
  const turned = rearranged(by, gives);
  const name = (one: string): string => symbol(one, style);
  const number = (one: string): string => {
    const found = known.get(one);
    return one === gives || !found ? name(one) : valueText(one, found.value, style);
  };
  const called = { ...turned, left: name(gives) };
  return {
    rule: by.rule,
    about: by.about,
    uses,
    gives,
    equation: written({ ...by, left: name(by.left) }, name),
    rearranged: written(called, name),
    substituted: written(called, number),
    value,
    text: valueText(gives, value, style),
    why: { code: by.rule, data: { ids: placesOf(by), pd: course.wording } },
  };
}

/** Of each step five hints, one saying more than the other. */
const hintsOf = (steps: readonly Step[], course: Course): readonly string[] =>
  steps.flatMap(({ about, why, equation, substituted, gives, text }) => [
    say({ code: 'look at', data: { ids: about } }),
    say(why),
    equation,
    substituted,
    `${symbol(gives, course)} = ${text}`,
  ]);

/** The given readings that cannot all be right; none where they agree. */
function disagreement(relations: readonly Relation[], known: ReadonlyMap<string, Known>): readonly string[] {
  for (const relation of relations) {
    const value = valueOf(relation, relation.left, known);
    const found = known.get(relation.left)?.value;
    if (value && found && !value.equals(found))
      return [...new Set(namesOf(relation).flatMap((name) => roots(name, known)))];
  }
  return [];
}

/** A quantity that, if it were known too, would be enough. */
function missing(
  circuit: Circuit,
  relations: readonly Relation[],
  given: ReadonlyMap<string, Fraction>,
  find: string,
): string | undefined {
  const solution = solveExact(circuit);
  const truth = stated(circuit);
  const readings = circuit.components.flatMap(({ id }) => {
    const [current, voltage] = [solution.current(id), solution.voltage(id)];
    return [
      ...(current ? [[`I_${id}`, current] as const] : []),
      ...(voltage ? [[`V_${id}`, voltage] as const] : []),
    ];
  });
  return [...truth, ...readings].find(
    ([name, value]) =>
      name !== find && !given.has(name) && follow(relations, new Map([...given, [name, value]])).has(find),
  )?.[0];
}

/**
 * How a quantity follows from what is given, in few steps of one equation each, with its reasons and hints; or which quantity is
 * missing, which readings disagree, or which rule the course leaves out.
 */
export function explain(circuit: Circuit, { given, find, course = usualCourse }: Question): Derivation {
  const all = given
    ? new Map(Object.entries(given).map(([name, value]) => [name, new Fraction(value)]))
    : stated(circuit);
  const start = new Map(all);
  for (const [name, value] of stated(circuit))
    if (value.equals(0) && name.startsWith('R')) start.set(name, value);
  const relations = relationsOf(circuit, [...start.keys(), find]);
  const allowed = relations.filter(({ rule }) => !course.without?.includes(rule));
  const known = follow(allowed, start);
  const without = (status: Derivation['status'], reason: Said): Derivation => ({
    status,
    steps: [],
    hints: [],
    reason,
  });

  const names = disagreement(relations, known);
  if (names.length > 0) return without('contradiction', { code: 'readings disagree', data: { names } });
  const found = known.get(find);
  if (found) {
    const steps = wayTo(find, known).flatMap((name) => {
      const way = known.get(name);
      return (way && step(name, way, known, course)) ?? [];
    });
    const answer = {
      quantity: find,
      value: found.value,
      text: valueText(find, found.value, styleOf(course)),
    };
    return { status: 'found', answer, steps, hints: hintsOf(steps, course) };
  }
  const { faults, remarks } = solveExact(circuit);
  const [plain] = [...faults, ...remarks.filter(({ code }) => code === 'open loop')];
  if (plain && !given) return without('not enough', plain);
  const wider = follow(relations, start);
  const barred = wayTo(find, wider)
    .map((name) => wider.get(name)?.by)
    .find((by) => by && !allowed.includes(by));
  if (barred) {
    const rule = say({ code: barred.rule, data: { ids: placesOf(barred), pd: course.wording } });
    return without('not enough', { code: 'needs a rule', data: { find, rule } });
  }
  const { bridge } = electrical(circuit);
  const supplies = circuit.components.flatMap(({ kind, id }) => (kind === 'supply' ? [id] : []));
  const ids = bridge.length > 0 ? bridge : supplies.length > 1 && !given ? supplies : [];
  if (ids.length > 0) return without('not enough', { code: 'needs simultaneous equations', data: { ids } });
  const more = missing(circuit, allowed, start, find);
  if (more === undefined) return without('not enough', { code: 'not enough known', data: { find } });
  return without('not enough', { code: 'one is missing', data: { find, missing: more } });
}
