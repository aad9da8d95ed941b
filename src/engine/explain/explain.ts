import { hasFault, type Circuit } from '../circuit/index.ts';
import type { Fraction } from '../quantity/index.ts';
import { solve } from '../solve/index.ts';
import { say, type Said } from '../reasons/index.ts';
import { usualCourse, type Course } from '../words/index.ts';
import type { Reasoning } from './codes.ts';
import { direct } from './direct.ts';
import { thinkOfSupply } from './between-terminals.ts';
import { follow, roots, wayTo } from './derive.ts';
import type { Derivation, Step } from './derivation.ts';
import { disagreement } from './disagreement.ts';
import { figuresGiven } from './figures.ts';
import { stated } from './given.ts';
import { exact, read, type Interval } from './interval.ts';
import { missing } from './missing.ts';
import { equationsOf, mostEquations } from './equations.ts';
import { placesOf } from './relation.ts';
import { realOf, relationsOf } from './relations.ts';
import { holdsIn } from './secret.ts';
import { rungsOf, saidOnce, stepTo } from './step.ts';
import { why } from './why.ts';
import { shorter } from './shorter.ts';
import { styleOf, valueText } from './write.ts';

/** A course that leaves out some rules. */
export interface Lesson extends Course {
  readonly without?: readonly Reasoning[];
  /** For two resistors in parallel the product of their resistances over the sum, rather than reciprocals. */
  readonly productOverSum?: boolean;
}

/** What is known and asked. */
export interface Question {
  /** Values in SI units by quantity name; absent: what the circuit's line states and does not hide. */
  readonly given?: Readonly<Record<string, Fraction | number | string>>;
  /** A quantity name; also `W_` energy and `Q_` charge, with the time `t` given. */
  readonly find: string;
  readonly course?: Lesson;
}

/** As many as are drawn. */
const mostComponents = 200;

/** What is known at the start, and what is known to be 0. */
function startOf(circuit: Circuit, given: Question['given']): ReadonlyMap<string, Interval> {
  const line = [...stated(circuit)].map(([name, value]) => [name, exact(value)] as const);
  if (!given) return new Map(line);
  const without = line.filter(([name, { value }]) => value.equals(0) && name.startsWith('R'));
  return new Map([...Object.entries(given).map(([name, value]) => [name, read(value)] as const), ...without]);
}

/** Names that a lack is told by: what the line of a circuit states, then what a meter reads, then what is asked of a component. */
function askable({ components }: Circuit, find: string): readonly string[] {
  const own = components.flatMap(({ id, kind }) =>
    kind === 'supply' ? [`E_${id}`, `r_${id}`] : [kind === 'source' ? `I_${id}` : `R_${id}`],
  );
  const readings = components.flatMap(({ id }) => [`I_${id}`, `V_${id}`]);
  const asked = find.replace(/^[^_]*/, '');
  return [...own, 't', ...readings, `P${asked}`, `R${asked}`];
}

/** The derivation that some steps make. */
function finished(find: string, value: Fraction, steps: readonly Step[], course: Course): Derivation {
  const answer = { quantity: find, value, text: valueText(find, value, styleOf(course)) };
  const rungs = rungsOf(steps, course);
  return { status: 'found', answer, steps, hints: rungs.map((rung) => say(rung)), rungs };
}

/**
 * How a quantity follows from what is given, in few steps of one equation each, with its reasons and hints; or which quantity is
 * missing, which readings disagree, or which rule the course leaves out.
 */
export function explain(
  circuit: Circuit,
  { given, find, course: asked = usualCourse }: Question,
): Derivation {
  const figures = asked.figures === 'as given' ? figuresGiven(circuit, given) : asked.figures;
  const course = { ...asked, figures };
  const without = (status: Derivation['status'], reason: Said): Derivation => ({
    status,
    steps: [],
    hints: [],
    rungs: [],
    reason,
  });
  const count = circuit.components.length;
  if (count > mostComponents)
    return without('not enough', { code: 'too large to explain', data: { count, limit: mostComponents } });
  const start = startOf(circuit, given);
  const holds = holdsIn(circuit);
  const relations = relationsOf(circuit, [...start.keys(), find]).filter((each) => {
    const { rule } = each;
    if (!holds(each)) return false;
    if (rule === 'trial p.d.') return course.without?.includes('resistances in parallel') === true;
    return course.productOverSum === true || rule !== 'product over sum';
  });
  const allowed = relations.filter(({ rule }) => !course.without?.includes(rule));
  const single = follow(allowed, start);
  const isReal = realOf(circuit, [...start.keys(), find]);
  const isSecret = hasFault(circuit);
  const equations =
    isSecret || circuit.terminals || single.has(find)
      ? undefined
      : equationsOf(circuit, (name) => single.get(name)?.value, isReal, find, course);
  const mayUse = !course.without?.includes('e.m.f.s round a loop');
  const currents = mayUse ? [...(equations?.currents ?? [])] : [];
  const known =
    currents.length === 0
      ? single
      : follow(
          allowed,
          new Map([...currents.map(([name, value]) => [name, exact(value)] as const), ...single]),
        );
  const names = disagreement(relations, single, start.keys());
  if (names.length > 0) return without('contradiction', { code: 'readings disagree', data: { names } });
  const found = known.get(find);
  if (found) {
    const best = direct(currents.length === 0 ? shorter(find, known, allowed) : known);
    const first = direct(single);
    const after = wayTo([find], best);
    const from = roots([find], best).filter((name) => !start.has(name));
    const solved = equations?.way(from.filter((name) => equations.currents.has(name)));
    const before = wayTo([...(solved?.uses ?? []), ...(solved ? from : [])], first);
    const steps = saidOnce([
      ...before.flatMap((name) => stepTo(name, first, course) ?? []),
      ...(solved?.steps ?? []),
      ...after.filter((name) => !before.includes(name)).flatMap((name) => stepTo(name, best, course) ?? []),
    ]);
    return finished(find, (best.get(find) ?? found).value, steps, course);
  }
  if (isSecret) return without('not enough', { code: 'not as marked', data: {} });
  if (!given) {
    const { faults, remarks } = solve(circuit);
    const [plain] = [...faults, ...remarks.filter(({ code }) => code === 'open loop')];
    if (plain) return without('not enough', plain);
  }
  const wider = follow(relations, start);
  const barred = wayTo([find], wider)
    .map((name) => wider.get(name)?.by)
    .find((by) => by && !allowed.includes(by));
  if (barred) {
    const rule = say(why(barred.rule, placesOf(barred), course));
    return without('not enough', { code: 'needs a rule', data: { find, rule } });
  }
  const thought = find === 'R_total' ? thinkOfSupply(circuit, course) : undefined;
  if (thought) {
    const [name, emf] = thought.start;
    const more = explain(thought.circuit, {
      given: { ...Object.fromEntries([...start].map(([one, { value }]) => [one, value])), [name]: emf },
      find,
      course,
    });
    if (more.answer) return finished(find, more.answer.value, [thought.step, ...more.steps], course);
    if (more.reason?.code === 'needs a rule' || more.reason?.code === 'too many equations') return more;
  }
  if (equations?.isEnough && !mayUse)
    return without('not enough', {
      code: 'needs a rule',
      data: { find, rule: say(why('e.m.f.s round a loop', equations.loop, course)) },
    });
  if (equations?.isEnough && equations.count > mostEquations)
    return without('not enough', {
      code: 'too many equations',
      data: { count: equations.count, limit: mostEquations },
    });
  const lacking = equations ? equations.needs.filter((name) => !single.has(name)) : [];
  const [lack] = lacking;
  if (lack !== undefined && lack !== find && lacking.length === 1)
    return without('not enough', { code: 'one is missing', data: { find, missing: lack } });
  const zeros = new Set([...known].flatMap(([name, { value }]) => (value.equals(0) ? [name] : [])));
  const more = missing(allowed, known.keys(), zeros, askable(circuit, find), find);
  if (more === undefined) return without('not enough', { code: 'not enough known', data: { find } });
  return without('not enough', { code: 'one is missing', data: { find, missing: more } });
}
