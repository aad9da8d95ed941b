import { isSupply, say, suitablePrefix, writeReading, type Component } from '../../engine/core.ts';
import { sayLevels } from '../../engine/words/levels/index.ts';
import { figuresOf, readingOf, type Snapshot } from '../link/index.ts';

/** A component of a level diagram: from one height to another, along the current. */
export interface Step {
  readonly id: string;
  /** In volts; undefined where it has no steady reading. */
  readonly heights: readonly [start: number, end: number] | undefined;
  /** Whether a current flows through it, however small; of a voltmeter none does that matters. A supply drives one, or would. */
  readonly carries: boolean;
  /** "4.00 V", "—". */
  readonly text: string;
  /** "R1: a drop of 4.00 volts, from 6.00 volts to 2.00 volts". */
  readonly spoken: string;
}

/** A height to be heard: "6.00 volts". */
function spokenHeight(snapshot: Snapshot, volts: number): string {
  const figures = figuresOf(snapshot);
  const prefix = suitablePrefix(volts, 'V', figures);
  const { decimalSign } = snapshot.course;
  const { number } = writeReading(volts, 'V', { figures, prefix, decimalSign });
  return say({ code: 'spoken', data: { number, prefix, unit: 'V' } });
}

/**
 * A supply that delivers lifts from its negative terminal to its positive, a constant current goes its way up or down; everything else is
 * a drop, from the higher end.
 */
function heightsOf({ readings }: Snapshot, component: Component): Step['heights'] {
  const { id, kind, from, to } = component;
  const [start, end] = [from, to].map((node) => readings.potential(node));
  if (start === undefined || end === undefined) return undefined;
  const [a, b] = [Number(start), Number(end)];
  const isForward = Number(readings.current(id) ?? 0) >= 0;
  if (kind === 'source' && !isForward) return [a, b];
  const lifts = isSupply(component) && isForward;
  return lifts || a < b ? [b, a] : [a, b];
}

/** What a component does to the potential on a board. */
export function stepOf(snapshot: Snapshot, component: Component): Step {
  const { id, kind } = component;
  const heights = heightsOf(snapshot, component);
  const { text, spoken } = readingOf(snapshot, `V_${id}`);
  const carries =
    isSupply(component) || (kind !== 'voltmeter' && Number(snapshot.readings.current(id) ?? 0) !== 0);
  if (!heights) return { id, heights, carries, text: '—', spoken: `${id}: ${spoken}` };
  const [from, to] = heights;
  const step = from === to ? 'none' : from < to ? 'lift' : 'drop';
  const [start, end] = [from, to].map((volts) => spokenHeight(snapshot, volts));
  return {
    id,
    heights,
    carries,
    text,
    spoken: sayLevels({
      code: 'level step',
      data: { id, step, by: spoken, from: start ?? '', to: end ?? '' },
    }),
  };
}
