import { all, any, say, type Sentences } from '../../words/index.ts';
import type { GapMistake, ReasoningElementData, SettingThere } from '../element-codes.ts';

const claimButtons = { test: 'Test', go: 'Show where it fails' };

const signs: Readonly<Record<string, string>> = {
  '=': 'equals',
  '<': 'is less than',
  '>': 'is greater than',
  '≤': 'is at most',
  '≥': 'is at least',
  '≠': 'is not equal to',
  '+': 'plus',
  '−': 'minus',
  '×': 'times',
  '/': 'over',
  '²': 'squared',
  '÷': 'divided by',
  '√': 'the square root of',
  '(': 'open bracket',
  ')': 'close bracket',
};

const stepsButtons = { step: 'Next step', hint: 'Next hint', answer: 'Show the number', back: 'Back' };

const columns = { quantity: 'Quantity', predicted: 'I predict', shown: 'The board has' };

/** Quantities of worked solutions that no board reads. */
const others = new Map([
  ['t', 'time'],
  ['W', 'energy of'],
  ['Q', 'charge through'],
]);

/** A block as it is put together, `(R2∥(R3+R4))`; a group inside it ends with a comma, so that it is not heard as another block. */
const block = (label: string): string =>
  label
    .replace(/^\((.*)\)$/, '$1')
    .replaceAll('(', 'the group ')
    .replace(/\)+(?=.)/g, ',')
    .replaceAll(')', '')
    .replaceAll('+', ' and then ')
    .replaceAll('∥', ' beside ');

const gapMistakes: Readonly<Record<GapMistake, string>> = {
  'not a number': 'Write a number, such as 0.25.',
  unit: 'That is not the unit of this quantity.',
  sign: 'The number is right, but not its sign.',
  'power of ten':
    'The digits are right, but the point is in the wrong place: look at the units and their prefixes.',
  'upside down': 'You have divided the wrong way round.',
  rounding: 'That is close: keep more figures while you work, and round at the end.',
  other: 'Not yet: look at the line again, and work it out once more.',
};

const turnedLetters: Readonly<Record<string, string>> = {
  E: 'the e.m.f. of ',
  r: 'the internal resistance of ',
};

const settingThere = ({ id, quantity, text }: SettingThere): string =>
  `${turnedLetters[quantity.charAt(0)] ?? ''}${id} ${quantity ? 'at ' : ''}${text}`;

/** Every setting of what can be turned, or the only one there is. */
const everywhere = (turned: readonly string[]): string =>
  turned.length > 0 ? `at every setting of ${all(turned)}` : 'here, where nothing can be turned';

/** What the elements say that reason. */
export const elements: Sentences<ReasoningElementData> = {
  statement: () => 'Statement',
  'claim button': ({ does }) => claimButtons[does],
  'write so': ({ text }) => `Write ${text}`,
  verdict: ({ verdict, proved, tried, turned }) => {
    const count = `${tried.toLocaleString('en-GB')} settings tried`;
    if (verdict === 'sometimes') return 'Only sometimes true.';
    if (verdict === 'always')
      return proved
        ? `Always true: it holds ${everywhere(turned)}.`
        : `It may always be true: it holds at all of ${count}. That is no proof.`;
    return proved
      ? `Never true: it fails ${everywhere(turned)}.`
      : `It may never be true: it fails at all of ${count}. That is no proof.`;
  },
  'fails at': ({ settings }) =>
    settings.length > 0
      ? `It fails with ${all(settings.map(settingThere))}.`
      : 'It fails as the board stands now.',
  'claim now': ({ left, right, holds, alike }) =>
    `As the board stands now it ${holds ? 'holds' : 'fails'}: the left side is ${left}, the right side ${right}` +
    (alike ? '; they differ in later figures.' : '.'),
  sign: ({ sign }) => signs[sign] ?? sign,
  quantity: ({ letter, of, wording }) => {
    const own = letter === 'Vr' ? `${wording} across the internal resistance of` : others.get(letter);
    const [id = '', isRated] = of.split(/ (rated)$/);
    if (isRated) return `rated ${say({ code: 'measures', data: { letter, of: id, wording, ohms: '' } })}`;
    if (own) return of ? `${own} ${block(of)}` : own;
    return say({ code: 'measures', data: { letter, of: block(of), wording, ohms: '' } });
  },
  'solution heading': ({ part }) => (part === 'given' ? 'Given' : 'Find'),
  'worked solution': () => 'Worked solution',
  'equation number': ({ number }) => `equation ${number}`,
  'steps button': ({ does }) => stepsButtons[does],
  'step count': ({ shown, steps }) => `${shown} of ${steps}`,
  'is given': () => 'There is nothing to work out: what is asked is given.',
  'which quantity': ({ names: [name = 'R_total'] }) =>
    `Say which quantity is to be worked out, by of="…", such as ${name}.`,
  'solution covered': () => 'The readings are covered: predict first, then uncover them.',
  gap: ({ of, unit }) => (unit ? `${of} in ${unit}` : of),
  'gap mistake': ({ mistake }) => gapMistakes[mistake],
  'gap right': () => 'Right.',
  'prediction heading': ({ column }) => columns[column],
  'prediction verdict': ({ right }) => (right ? 'as predicted' : 'not as predicted'),
  'prediction button': ({ does }) => (does === 'reveal' ? 'Compare with the board' : 'Predict again'),
  'given not read': ({ found }) =>
    `“${found}” cannot be read as something given; write a quantity and its value, such as I_R1 = 0.5 A.`,
  graph: ({ names, against }) => `Graph of ${all(names)} against ${against}`,
  'graph point': ({ at, values }) => `${at}: ${values.join(', ')}`,
  'graph values': () => 'Values',
  'one unit': ({ names, units }) =>
    `The upright axis has one unit, but ${all(names.map((name, place) => `${name} is in ${units[place] ?? ''}`))}. Draw a graph for each.`,
  'only its own': ({ name, suggestion }) =>
    `${name} is not of the component whose characteristic is drawn; ask for ${suggestion}.`,
  'which is turned': ({ found, names }) =>
    (found && `${found} cannot be turned here. `) +
    (names.length > 0
      ? `Say what is turned, by against="…": ${any(names)}.`
      : 'Nothing in this circuit can be turned; write a range, such as R1 [4..40] 12 Ω.'),
};
