import {
  lastSetting,
  nearestSetting,
  quantity,
  settingAt,
  solve,
  writeQuantity,
  Fraction,
} from '../../engine/core.ts';
import { say } from '../../engine/reasons/index.ts';
import {
  calledQuantity,
  inLetters,
  partsOf,
  readingOf,
  spokenQuantity,
  type Snapshot,
} from '../link/index.ts';
import { circuitAt, type Curve } from './curves.ts';
import type { Turned } from './turned.ts';

/** A place on the graph that is read. */
export interface Point {
  /** Along the axis, in SI units. */
  readonly at: number;
  /** What is turned, then each quantity: its name, and the reading "1.50 A". */
  readonly terms: readonly { readonly name: string; readonly text: string }[];
  /** All of it to be heard. */
  readonly spoken: string;
}

/** What a quantity, or what surrounds the circuit, is called: "current through A1", "temperature". */
export const calledIn = ({ course }: Snapshot, name: string): string =>
  partsOf(name).of
    ? calledQuantity(name, course)
    : say({ code: 'turns', data: { letter: name === 'light' ? 'light' : 'temperature', of: '' } });

/** The point where a board stands. */
export function pointNow(snapshot: Snapshot, { name, now, alone }: Turned, curves: readonly Curve[]): Point {
  const turned = alone
    ? { name: inLetters(name, snapshot.course), ...readingOf(snapshot, name, { as: 'signed' }) }
    : { name, text: writeQuantity(now, snapshot.course.decimalSign).text, spoken: spokenQuantity(now) };
  const read = curves.map((curve) => {
    const crosses = curve.values.some((value = 0) => value < 0);
    return {
      of: curve.name,
      name: inLetters(curve.name, snapshot.course),
      ...readingOf(snapshot, curve.name, { as: crosses ? 'signed' : 'magnitude' }),
    };
  });
  const values = read.map(({ of, spoken }) => `${calledIn(snapshot, of)} ${spoken}`);
  const at = `${calledIn(snapshot, name)} ${turned.spoken}`;
  return {
    at: Number(now.value),
    terms: [turned, ...read],
    spoken: say({ code: 'graph point', data: { at, values } }),
  };
}

/** The point at a setting, the first being 0, whatever the board is set to. */
export function pointAt(
  snapshot: Snapshot,
  turned: Turned,
  curves: readonly Curve[],
  setting: number,
): Point {
  const { start, settings, course, covered } = snapshot;
  const value = settingAt(turned.range, setting);
  const circuit = circuitAt(turned.alone ?? snapshot.circuit, turned, value);
  const readings = solve(circuit);
  const { unit, prefix } = turned.now;
  return pointNow(
    { circuit, start, settings, readings, solution: readings, course, covered },
    { ...turned, now: quantity(value, unit, prefix) },
    curves,
  );
}

/** The setting nearest to a value along the axis. */
export const settingNear = ({ range }: Turned, value: number): number =>
  nearestSetting(range, new Fraction(value));

/** The number of the last setting, the first being 0. */
export const lastOf = ({ range }: Turned): number => lastSetting(range);
