import {
  isContact,
  isTrack,
  thinSpace,
  type Circuit,
  type Component,
  type WrittenQuantity,
} from '../../engine/core.ts';
import { sayWritten } from '../../engine/words/written/index.ts';
import {
  asRead,
  calledQuantity,
  figuresOf,
  inLetters,
  readingOf,
  unitOf,
  type Snapshot,
} from '../link/index.ts';

/** A quantity that is to be written beside its component: its symbol alone, with its reading, or with a blank to fill. */
interface Wish {
  readonly name: string;
  readonly id: string;
  readonly kind: WrittenQuantity['kind'];
  readonly shows: 'symbol' | 'reading' | 'blank';
}

/** What a component is half the symbol of, and so has no wires of its own. */
const halfOf = (component: Component): 'changeover' | 'potentiometer' | undefined =>
  isContact(component) || isTrack(component) ? component.kind : undefined;

const shows = { '': 'symbol', '=': 'reading', '=?': 'blank' } as const;

const partsOf = (word: string): readonly string[] => /^([IV])_([^=]+)(=\??)?$/.exec(word) ?? [];

/** The component whose current or p.d. a word asks for. */
const askedOf = (word: string, { components }: Circuit): Component | undefined =>
  components.find(({ id }) => id === partsOf(word)[2]);

/** A wish such as `I_R1`, `V_R1=` or `V_R1=?`; undefined where the circuit has no such current or p.d. */
function wishOf(word: string, circuit: Circuit): Wish | undefined {
  const [, letter, id = '', sign = ''] = partsOf(word);
  const component = askedOf(word, circuit);
  if (!component || halfOf(component)) return undefined;
  const kind = letter === 'I' ? 'current' : 'voltage';
  return { name: `${letter}_${id}`, id, kind, shows: shows[sign as keyof typeof shows] };
}

const wordsOf = (wanted: string): string[] =>
  asRead(wanted)
    .split(/[\s,]+/)
    .filter(Boolean);

/** What is wanted of a circuit, each quantity once: as it was written last. */
function wishesOf(wanted: string, circuit: Circuit): readonly Wish[] {
  const found = wordsOf(wanted).flatMap((word) => wishOf(word, circuit) ?? []);
  return [...new Map(found.map((wish) => [wish.name, wish])).values()];
}

/** The sentence about the first word that asks for nothing there is; '' where all do. */
export function problemOf(wanted: string, circuit: Circuit): string {
  const found = wordsOf(wanted).find((word) => !wishOf(word, circuit));
  if (found === undefined) return '';
  const like = circuit.components.find((each) => !halfOf(each))?.id ?? 'R1';
  const asked = askedOf(found, circuit);
  const half = asked && halfOf(asked);
  return sayWritten({ code: 'not to be written', data: { found, like, half } });
}

const blank = '_'.repeat(6);
const roomFor = (name: string, snapshot: Snapshot): string =>
  `−0.${'0'.repeat(figuresOf(snapshot))}${thinSpace}m${unitOf(name)}`;

/** What follows a symbol: the reading with its sign, which its arrow gives a meaning, a p.d. without one; where readings are kept back, a blank. */
function textOf({ name, kind, shows }: Wish, snapshot: Snapshot): string {
  if (shows === 'symbol') return '';
  const unit = unitOf(name);
  if (shows === 'blank' || snapshot.covered) return `= ${blank}${thinSpace}${unit}`;
  const { text, value } = readingOf(snapshot, name, { as: kind === 'current' ? 'signed' : 'magnitude' });
  if (text.length <= roomFor(name, snapshot).length) return `= ${text}`;
  return value === 0 ? `= 0${thinSpace}${unit}` : '= —';
}

/** What a drawing has to write, with room for every reading. */
export function writtenOf(wanted: string, snapshot: Snapshot): readonly WrittenQuantity[] {
  return wishesOf(wanted, snapshot.circuit).map((wish) => {
    const { name, id, kind, shows } = wish;
    const room =
      shows === 'reading' && !snapshot.covered ? `= ${roomFor(name, snapshot)}` : textOf(wish, snapshot);
    return { name, id, kind, text: inLetters(name, snapshot.course), reading: room };
  });
}

/** What follows each symbol at this moment, by the names of the quantities. */
export function readingsOf(wanted: string, snapshot: Snapshot): ReadonlyMap<string, string> {
  return new Map(wishesOf(wanted, snapshot.circuit).map((wish) => [wish.name, textOf(wish, snapshot)]));
}

/** What is written, in words: "The current through R1 is written beside it; …". */
export function toldOf(wanted: string, snapshot: Snapshot): string {
  const quantities = wishesOf(wanted, snapshot.circuit).map(({ name, kind, shows }) => ({
    called: calledQuantity(name, snapshot.course),
    shows: snapshot.covered && shows === 'reading' ? ('blank' as const) : shows,
    reading:
      shows === 'reading'
        ? readingOf(snapshot, name, { as: kind === 'current' ? 'signed' : 'magnitude' }).spoken
        : '',
  }));
  return quantities.length > 0 ? sayWritten({ code: 'written', data: { quantities } }) : '';
}
