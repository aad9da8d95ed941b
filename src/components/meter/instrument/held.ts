import { say, type Unit } from '../../../engine/core.ts';
import type { ChangeText, ReadingStyle, Snapshot } from '../../link/index.ts';
import type { Instrument } from './instrument.ts';
import { measure, passed, stepsOf } from './measure.ts';

/**
 * What a meter's reading has done since it was held: one that reads in steps compares these, and from beyond its range there is
 * nothing to compare but that it was there.
 */
export function changeOn(
  snapshot: Snapshot,
  quantity: string,
  style: ReadingStyle,
  instrument: Instrument,
  unit: Unit,
): ChangeText | undefined {
  const { comparison, held, readings, course } = snapshot;
  const { resolution } = instrument;
  if (!comparison || !resolution) return comparison?.changeOf(snapshot, quantity, style);
  const [was, is] = [held, readings].map((each) => each?.quantity(quantity));
  if (was === undefined || is === undefined) return comparison.changeOf(snapshot, quantity, style);
  const ends = [was, is].map((value) => passed(value, instrument));
  if (ends.every(Boolean)) return undefined;
  if (ends.some(Boolean)) {
    const before = measure(was, resolution, instrument, unit, course);
    const told = (text: string): string => say({ code: 'was', data: { text } });
    return { text: told(before.text), spoken: told(before.spoken), mark: '' };
  }
  const endless = { ...instrument, limits: undefined };
  return comparison.changeOf(snapshot, quantity, {
    ...style,
    instrument: {
      step: resolution,
      read: (value) => resolution.mul(stepsOf(value, resolution)),
      write: (value) => measure(value, resolution, endless, unit, course),
    },
  });
}
