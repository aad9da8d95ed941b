import { quantities } from '../../engine/core.ts';
import type { Said } from '../../engine/reasons/index.ts';
import { asRead, inLetters, isHidden, unitOf, type Snapshot } from '../link/index.ts';
import type { Turned } from './turned.ts';

/** At least one name. */
export type Names = readonly [string, ...string[]];

/** The quantities that a page asks for, all of one unit; or why they cannot be drawn together. */
export function namesIn(
  of: string,
  { circuit, readings, course }: Snapshot,
  { name: along, alone }: Turned,
): Names | Said {
  const asked = asRead(of)
    .split(/[\s,]+/)
    .filter(Boolean);
  const usual = alone ? along.replace('V', 'I') : 'I_total';
  const [first = usual, ...rest] = [...new Set(asked)];
  const names: Names = [first, ...rest];
  const known = new Set(quantities(alone ?? circuit));
  for (const name of names) {
    if (isHidden({ circuit }, name)) return { code: 'unknown', data: {} };
    const reason = known.has(name) ? undefined : readings.reason(name);
    if (reason?.code === 'no such quantity') return reason;
    if (alone && !known.has(name)) return { code: 'only its own', data: { name, suggestion: usual } };
  }
  const units = names.map(unitOf);
  const other = names.find((_, place) => units[place] !== units[0]);
  if (other)
    return {
      code: 'one unit',
      data: {
        names: [first, other].map((name) => inLetters(name, course)),
        units: [unitOf(first), unitOf(other)],
      },
    };
  return names;
}
