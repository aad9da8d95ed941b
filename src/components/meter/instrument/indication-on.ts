import { readingOf, unitOf, type Snapshot } from '../../link/index.ts';
import type { Indication } from '../indication.ts';
import { dialView } from './dial-view.ts';
import { dialOf } from './dial.ts';
import { changeOn } from './held.ts';
import { instrumentOf, type Build } from './instrument.ts';
import { measure } from './measure.ts';

/** What an instrument with a range, steps or a needle shows of a quantity. */
export function indicationOn(snapshot: Snapshot, wish: Build, quantity: string, figures: number): Indication {
  const { readings, held, course } = snapshot;
  const unit = unitOf(quantity);
  const instrument = instrumentOf(snapshot.start, wish, quantity);
  const { prefix, resolution, scale, mistake } = instrument;
  const style = { figures, as: 'signed', ...(prefix !== undefined && { prefix }) } as const;
  const usual = readingOf(snapshot, quantity, style);
  const value = readings.quantity(quantity);
  const measurable =
    resolution && value !== undefined && usual.value !== undefined && !readings.reason(quantity);
  const { text, spoken } = measurable ? measure(value, resolution, instrument, unit, course) : usual;
  const change = changeOn(snapshot, quantity, style, instrument, unit);
  const dial = scale && dialOf(scale, unit, usual, instrument, course, change && held?.quantity(quantity));
  return { text, spoken, dial: dial && dialView(dial), change, mistake };
}
