import type { ElementData } from '../element-codes.ts';
import type { Sentences } from '../language.ts';
import { all, any } from './list.ts';

/** Units, one of them and several. */
const units = {
  V: ['volt', 'volts'],
  A: ['ampere', 'amperes'],
  Ω: ['ohm', 'ohms'],
  W: ['watt', 'watts'],
  F: ['farad', 'farads'],
  '°C': ['degree Celsius', 'degrees Celsius'],
  lx: ['lux', 'lux'],
} as const;
const prefixes = { p: 'pico', n: 'nano', µ: 'micro', m: 'milli', '': '', k: 'kilo', M: 'mega', G: 'giga' };

/** A quantity by its letter: the noun, and the word between it and a component. */
const measured = new Map<string, readonly [string, string]>([
  ['I', ['current', 'through']],
  ['R', ['resistance', 'of']],
  ['P', ['power', 'of']],
  ['E', ['e.m.f.', 'of']],
  ['r', ['internal resistance', 'of']],
  ['Pemf', ['power', 'of the e.m.f. of']],
  ['Pr', ['power', 'lost inside']],
]);
const wholes = new Map<string, (noun: string) => string>([
  ['total', (noun) => `total ${noun}`],
  ['loop', (noun) => `${noun} of the whole loop`],
  ['dissipated', (noun) => `${noun} dissipated`],
]);
const instruments = { V: 'Voltmeter', A: 'Ammeter', Ω: 'Ohmmeter', W: 'Wattmeter' };

const buttons = {
  reset: 'Reset',
  undo: 'Undo',
  redo: 'Redo',
  hold: 'Hold readings',
  release: 'Let go of readings',
  reveal: 'Show the readings',
  copy: 'Copy or save…',
  link: 'Copy a link to this setting',
  text: 'Copy the circuit as text',
  png: 'Save as picture',
  print: 'Save as picture for printing',
  svg: 'Save as SVG',
};
const turned = {
  I: 'current',
  E: 'e.m.f.',
  r: 'internal resistance',
  temperature: 'temperature',
  light: 'light',
};
const sensors = { temperature: 'a thermistor', light: 'an LDR' };
const conditions = { broken: 'taken out', bridged: 'a wire across it' };
const tableButtons = {
  record: 'Record',
  clear: 'Delete all',
  undo: buttons.undo,
  copy: 'Copy as CSV',
  save: 'Save as CSV',
};
const undrawn = {
  empty: 'This circuit is empty',
  'too many': 'This circuit is very large',
  'part missing': 'What draws it did not load',
};

/** What the elements say of themselves. */
export const elements: Sentences<ElementData> = {
  'no board': ({ wanted, present }) =>
    (wanted || present.length === 0
      ? `There is no board${wanted && ` “${wanted}”`} here`
      : 'Say which board is meant, by board="…"') +
    (present.length > 0 ? `; there is ${all(present)}.` : '.'),
  'no circuit to show': () => 'The board has no circuit that can be read.',
  spoken: ({ number, prefix, unit }) => `${number} ${prefixes[prefix]}${units[unit][number === '1' ? 0 : 1]}`,
  covered: () => 'covered: predict it first',
  measures: ({ letter, of, wording, ohms }) => {
    const [noun, joint] = measured.get(letter) ?? [wording, 'across'];
    const ends = of.split('_');
    const what = ends.length > 1 ? `${noun} between ${all(ends)}` : `${noun} ${joint} ${of || 'its ends'}`;
    return (wholes.get(of)?.(noun) ?? what) + (ohms && `; its own resistance is ${ohms}`);
  },
  meter: ({ unit, id, caption, reading }) =>
    `${instruments[unit]}${id && ` ${id}`}${caption && `, ${caption}`}, ${reading}`,
  'not a meter': ({ id }) => `${id} is not a meter. Ask for what is to be read: I_${id}, V_${id} or P_${id}.`,
  lead: ({ end }) => end,
  'no points': () =>
    'A movable voltmeter needs two labelled points: name them in the line by capitals, such as @X and @Y.',
  'which meter': ({ meters }) =>
    meters.length > 0
      ? `Say which meter is meant, by of="…": ${any(meters)}.`
      : 'The circuit has no meter. Say what is to be read, by of="…", such as I_total.',
  'what to read': () => 'Say what is to be read, by of="…", such as I_total.',
  'not its unit': ({ found, unit }) =>
    `“${found}” is not a unit of this reading, which is in ${units[unit][1]}.`,
  typed: ({ id }) => `${id}, typed`,
  less: ({ id }) => `${id}: less`,
  more: ({ id }) => `${id}: more`,
  turns: ({ letter, of }) => turned[letter] + (of && ` of ${of}`),
  'nothing feels': ({ names }) =>
    `Nothing in this circuit feels ${any(names.map((name) => `the ${name}`))}; ${any(names.map((name) => sensors[name]))} would.`,
  'cannot be turned': ({ id }) =>
    `${id} has no range to be turned through; write one, such as ${id} [4..40] 12 Ω.`,
  'which component': ({ found, kind, ids }) =>
    (found && `${found} is not a ${kind}. `) +
    (ids.length > 0
      ? `Say which ${kind} is meant, by of="…": ${any(ids)}.`
      : `This circuit has no ${kind}${kind === 'resistor' ? ' with a range' : ''}.`),
  button: ({ does }) => buttons[does],
  copied: ({ done }) => (done ? 'Copied.' : 'This page may not copy by itself: copy the selected text.'),
  saved: ({ done }) =>
    done ? 'Saved.' : 'This page may not save files: open it by itself, and save the picture there.',
  'address not read': () => 'The setting in the address cannot be read, so it is not used.',
  'switch state': ({ closed }) => (closed ? 'closed' : 'open'),
  condition: ({ condition }) => (condition ? conditions[condition] : 'back as it was'),
  alter: ({ id, condition }) => `${condition === 'broken' ? 'Take out' : 'Wire across'} ${id}`,
  diagram: () => 'Circuit diagram',
  'caption hint': () => 'Point at a component, or walk to it with the arrow keys.',
  was: ({ text }) => `was ${text}`,
  compared: () => 'Readings against the held ones',
  held: ({ held }) => (held ? 'Readings held.' : 'Readings let go.'),
  'not drawn': ({ reason }) => `${undrawn[reason]}, so it is listed, not drawn.`,
  'board without circuit': () =>
    'This board has no circuit yet; write one, such as circuit="B1 6 V + R1 12 Ω".',
  'mistake at': ({ line, column, sentence }) =>
    `The circuit cannot be read at line ${line}, column ${column}: ${sentence}`,
  'ribbon key': ({ current }) => `ribbon of ${current}`,
  component: () => 'Component',
  holds: ({ rounded }) => (rounded ? 'holds, rounded' : 'holds'),
  'work it out': () => 'Work it out',
  'do not apply': ({ count }) => `${count === 1 ? 'Does' : 'Do'} not apply here: ${count}`,
  total: () => 'Total',
  overload: () => 'overload',
  beyond: ({ below, limit }) => `${below ? 'less' : 'more'} than ${limit}`,
  'not a choice': ({ found, of, suggestion, choices }) =>
    `“${found}” is not a ${of}; ${suggestion ? `did you mean ${suggestion}?` : `choose ${any(choices)}.`}`,
  'not a range': ({ found, unit }) =>
    `“${found}” is not a range of this meter; write the most that it can show, in ${units[unit][1]}, such as 3 ${unit}, or both ends, such as -1..1 ${unit}.`,
  'not a resolution': ({ found, unit }) =>
    `“${found}” is not a resolution of this meter; write the smallest step that it tells apart, in ${units[unit][1]}, such as 0.02 ${unit}.`,
  readings: () => 'Readings',
  'row number': () => 'No.',
  'delete row': ({ row }) => `Delete row ${row}`,
  'table button': ({ does }) => tableButtons[does],
  recorded: ({ rows }) => `${rows || 'No'} ${rows === 1 ? 'row' : 'rows'} recorded.`,
};
