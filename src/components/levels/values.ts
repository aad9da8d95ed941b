import { say, writeReading } from '../../engine/core.ts';
import { sayLevels } from '../../engine/words/levels/index.ts';
import type { Axis } from '../axis/index.ts';
import type { Sheet } from '../csv/index.ts';
import { figuresOf, type Snapshot } from '../link/index.ts';
import type { Step } from './steps.ts';

export { sheet, sheetView } from '../csv/index.ts';

const head = (of: 'before' | 'after' | 'change'): string => sayLevels({ code: 'level head', data: { of } });

/** The heights of a level diagram as a table, along the current: a lift is above 0, a drop below, so that changes round a loop add up to 0. */
export function valuesOf(snapshot: Snapshot, steps: readonly Step[], { prefix }: Axis): Sheet {
  const figures = figuresOf(snapshot);
  const { decimalSign } = snapshot.course;
  const number = (volts: number): string => writeReading(volts, 'V', { figures, prefix, decimalSign }).number;
  const rows = steps.map(({ id, heights }) => {
    if (!heights) return [id, '—', '—', '—'];
    const [start, end] = heights;
    return [id, number(start), number(end), (start < end ? '+' : '') + number(end - start)];
  });
  const unit = `${prefix}V`;
  const heads = [
    { name: say({ code: 'component', data: {} }), unit: '' },
    { name: head('before'), unit },
    { name: head('after'), unit },
    { name: head('change'), unit },
  ];
  return { heads, rows };
}
