import { nearest, type Circuit } from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import type { Said } from '../reasons/index.ts';
import { quantities, type Readings } from '../solve/index.ts';
import type { Course } from '../words/index.ts';
import type { Derivation } from './derivation.ts';
import { explain } from './explain.ts';
import { stated } from './given.ts';
import { readGiven } from './read-given.ts';
import { lessonWords, readLesson } from './read-lesson.ts';
import { styleOf, symbol, valueText } from './write.ts';

/** What a page asks to be worked out, as it writes it. */
export interface WorkedWish {
  /** A quantity name. */
  readonly of: string;
  /** `I_R1 = 0.5 A; R_R1`; '' for what the circuit's line states. */
  readonly given: string;
  /** `14-16 product-over-sum`; '' for every rule. */
  readonly lesson: string;
}

/** A worked solution as it is shown. */
export interface Worked {
  /** What is wrong with the page's wish. */
  readonly problem?: Said;
  /** Absent where the wish cannot be understood. */
  readonly derivation?: Derivation;
  /** What the steps start from: `E_B1 = 12.0 V`. */
  readonly given: readonly string[];
  /** What is asked, in the letters of the course. */
  readonly find: string;
}

/** Why there can be no such quantity; undefined where it may be asked. Blocks, energies and charges have names that no board reads. */
function refusal(circuit: Circuit, readings: Readings<Fraction | number>, of: string): Said | undefined {
  const names = quantities(circuit);
  if (!of) return { code: 'which quantity', data: { names: names.filter((name) => /^[IR]_/.test(name)) } };
  const isNamed =
    names.includes(of) || circuit.components.some(({ id }) => of === `W_${id}` || of === `Q_${id}`);
  if (isNamed || /^[A-Za-z]+_\(/.test(of)) return undefined;
  return readings.reason(of);
}

/** Works out what a page asks of a circuit whose readings are known. */
export function workedSolution(
  circuit: Circuit,
  readings: Readings<Fraction | number>,
  course: Course,
  { of, given, lesson }: WorkedWish,
): Worked {
  const asked = of.trim().replace(/^U_/, 'V_');
  const find = symbol(asked, course);
  const { choice, unknown } = readLesson(lesson);
  const read = readGiven(circuit, (name) => readings.quantity(name), given);
  const unread: Said | undefined =
    read.unread === undefined ? undefined : { code: 'given not read', data: { found: read.unread } };
  const barred = refusal(circuit, readings, asked) ?? unread;
  if (barred) return { problem: barred, given: [], find };
  const [found] = unknown;
  const data = { of: 'lesson', suggestion: nearest(found ?? '', lessonWords), choices: lessonWords };
  const derivation = explain(circuit, {
    ...(read.given && { given: read.given }),
    find: asked,
    course: { ...course, ...choice },
  });
  const { steps, answer } = derivation;
  const gained = new Set(steps.map(({ gives }) => gives));
  const used = new Set(steps.flatMap(({ uses }) => uses));
  const ids = circuit.components.map(({ id }) => id);
  const place = (name: string): number => [...ids, name].indexOf(name.replace(/^[^_]*_| rated$/g, ''));
  const start = [...used]
    .filter((name) => !gained.has(name))
    .sort((a, b) => place(a) - place(b) || (a < b ? -1 : 1));
  const roots = answer && steps.length === 0 ? [asked] : start;
  const written = roots.map((name) => {
    const value = read.given?.[name] ?? readings.quantity(name) ?? stated(circuit).get(name) ?? 0;
    return `${symbol(name, course)} = ${valueText(name, new Fraction(value), styleOf(course))}`;
  });
  return {
    ...(found !== undefined && { problem: { code: 'not a choice', data: { found, ...data } } }),
    derivation,
    given: written,
    find,
  };
}
