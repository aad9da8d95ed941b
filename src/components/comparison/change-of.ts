import { say, thinSpace, writeReading, type Unit } from '../../engine/core.ts';
import { sayChange } from '../../engine/words/comparison/index.ts';
import { changeFrom, writeRatio, type Change, type Measured } from '../../engine/comparison/index.ts';
import {
  figuresOf,
  prefixFor,
  readingOf,
  unitOf,
  type ChangeStyle,
  type ChangeText,
  type ReadingText,
  type Snapshot,
} from '../link/index.ts';

const marks = { rose: '▲', fell: '▼', same: '=' };

/** A board at the moment when its readings were held, in the circuit as it stands. */
function before(snapshot: Snapshot): Snapshot | undefined {
  const { start, circuit, settings, held, course, covered } = snapshot;
  return held && { start, circuit, settings, course, covered, solution: held, readings: held };
}

type Heard = Pick<ReadingText, 'text' | 'spoken'>;

/** A difference, as its reading is written. */
function writeBy(by: Measured, unit: Unit, snapshot: Snapshot, style: ChangeStyle): Heard {
  const { as, instrument } = style;
  if (instrument) {
    if (Number(by) !== 0) return instrument.write(instrument.read(by));
    const { text, spoken } = instrument.write(instrument.step);
    return {
      text: sayChange({ code: 'less than', data: { text } }),
      spoken: sayChange({ code: 'less than', data: { text: spoken } }),
    };
  }
  const figures = figuresOf(snapshot, style.figures);
  const prefix = style.prefix ?? prefixFor(snapshot, unit, by, figures);
  const exact = as === 'fraction' && typeof by !== 'number' ? by.toFraction() : undefined;
  const { number, text } = exact
    ? { number: exact, text: exact + thinSpace + unit }
    : writeReading(by, unit, { figures, prefix, decimalSign: snapshot.course.decimalSign });
  return { text, spoken: say({ code: 'spoken', data: { number, prefix: exact ? '' : prefix, unit } }) };
}

function writeTimes(ratio: Change['ratio'], snapshot: Snapshot, { as, figures }: ChangeStyle): string {
  if (ratio === undefined) return '';
  if (as === 'fraction' && typeof ratio !== 'number') return ratio.toFraction();
  return writeRatio(ratio, figuresOf(snapshot, figures)).replace('.', snapshot.course.decimalSign);
}

/** What a quantity of a board has done since the readings were held; exact values decide, where there are any. */
export function changeOf(snapshot: Snapshot, name: string, style: ChangeStyle = {}): ChangeText | undefined {
  const past = before(snapshot);
  if (!past) return undefined;
  const [was, is] = [past, snapshot].map((each) => readingOf(each, name, style));
  const [from, to] = [past, snapshot].map(({ readings, solution }) =>
    (style.as === 'fraction' ? solution : readings).quantity(name),
  );
  if (was?.text === '?' || is?.text === '?') return undefined;
  if (was?.value === undefined || is?.value === undefined || from === undefined || to === undefined) {
    const nothing = !was || was.text === '—' || was.text === is?.text;
    if (nothing) return undefined;
    const told = (text: string): string => say({ code: 'was', data: { text } });
    return { text: told(was.text), spoken: told(was.spoken), mark: '' };
  }
  const change = changeFrom(from, to, { signed: style.as === 'signed', read: style.instrument?.read });
  const { direction, turned } = change;
  const by = writeBy(change.by, unitOf(name), snapshot, style);
  const ratio = style.instrument && Number(change.by) === 0 ? '' : writeTimes(change.ratio, snapshot, style);
  const told = (by: string): string => sayChange({ code: 'change', data: { direction, by, ratio, turned } });
  return { text: told(by.text), spoken: told(by.spoken), mark: marks[direction] };
}
