import { quantity, settingAt, solve, writeQuantity, writeReading, type Unit } from '../../engine/core.ts';
import type { Axis } from '../axis/index.ts';
import type { Sheet } from '../csv/index.ts';
import { figuresOf, inLetters, type Snapshot } from '../link/index.ts';
import { circuitAt, type Curve } from './curves.ts';
import { lastOf, settingNear } from './points.ts';
import type { Turned } from './turned.ts';

/** The values of a graph, at its ends and near the marks of its axis: at settings that its slider has. */
export function sheetOf(
  snapshot: Snapshot,
  turned: Turned,
  curves: readonly Curve[],
  along: Axis,
  up: Axis,
  unit: Unit,
): Sheet {
  const { circuit, course } = snapshot;
  const figures = figuresOf(snapshot);
  const inside = along.marks.map(({ value }) => settingNear(turned, value));
  const settings = [...new Set([0, ...inside, lastOf(turned)])].sort((a, b) => a - b);
  const { unit: own } = turned.now;
  const rows = settings.map((setting) => {
    const value = settingAt(turned.range, setting);
    const solution = solve(circuitAt(turned.alone ?? circuit, turned, value));
    const cells = curves.map(({ name, sign }) => {
      const read = solution.quantity(name);
      const style = { figures, prefix: up.prefix, decimalSign: course.decimalSign };
      return read === undefined ? '—' : writeReading(read * sign, unit, style).number;
    });
    return [writeQuantity(quantity(value, own, along.prefix), course.decimalSign).number, ...cells];
  });
  const heads = [
    { name: inLetters(turned.name, course), unit: along.prefix + own },
    ...curves.map(({ name }) => ({ name: inLetters(name, course), unit: up.prefix + unit })),
  ];
  return { heads, rows };
}
