import type { Expected, MistakeData } from '../../notation/index.ts';
import type { Sentences } from '../language.ts';

const expectations: Readonly<Record<Expected, string>> = {
  component: 'a component (such as R1 12 Ω)',
  label: 'a label (such as R1)',
  join: '+, ∥ or the end',
  number: 'a number',
  percent: 'a % sign',
  dots: 'two dots between the ends of the range',
  junction: 'a junction (such as @p)',
  dash: 'a dash between the junctions',
  place: 'a place (@p–@q, or across R1)',
  statement: 'a semicolon or the end',
  surrounding: 'a temperature or a light (such as 5 °C or 200 lx)',
};

/** What is wrong with a line of notation. */
export const notation: Sentences<MistakeData> = {
  'unexpected character': ({ found }) => `“${found}” does not belong in a circuit.`,
  expected: ({ found, suggestion, about }) =>
    `Expected ${expectations[about as Expected]}${found ? `, not “${found}”` : ' here'}.` +
    (/\w/.test(suggestion) ? ` Write ${suggestion}.` : ''),
  'write instead': ({ found, suggestion }) => `Write ${suggestion}, not “${found}”.`,
  'two readings': ({ found, suggestion, about }) =>
    `“${found}” can be read in two ways: write ${suggestion} or ${about}.`,
  'number too long': () => 'A number has at most 30 digits in a row, and powers of ten from −30 to 30.',
  'zero below': ({ found }) => `${found} divides by 0.`,
  'look-alike': ({ found, suggestion }) =>
    `A letter or digit of “${found}” only looks like the usual one: write ${suggestion}.`,
  'space after label': ({ suggestion }) => `Put a space after the label: ${suggestion}.`,
  'text too long': ({ about }) => `At most ${about} characters can be read.`,
  'too deep': ({ about }) => `Brackets can be ${about} deep, no deeper.`,
  'bracket alone': ({ found, suggestion }) =>
    `This “${found}” ${suggestion ? 'is never closed' : 'closes nothing'}.`,
  'join missing': ({ found }) => `“${found}” needs + (in series) or ∥ (in parallel) before it.`,
  'dash in series': () => 'A dash does not join components; use + for in series.',
  'kind not understood': ({ found, about }) => `${found}: the kind “${about}” is not understood yet.`,
  'kind missing': ({ found, suggestion }) =>
    `The letters of ${found} do not say what it is; write ${suggestion}, for instance.`,
  'label reserved': ({ found }) => `“${found}” is kept for totals; choose another label.`,
  'unit missing': ({ found, suggestion }) => `${found} needs a unit: ${suggestion}?`,
  unsuitable: ({ found, about }) => `“${found}” does not suit ${about}.`,
  'one too many': ({ found }) => `“${found}” is one too many; leave it out.`,
  'value missing': ({ found, suggestion }) => `${found} needs a value, such as ${suggestion}.`,
  'range backwards': ({ suggestion }) => `A range runs from the smaller to the larger: ${suggestion}.`,
  'junction alone': ({ found }) =>
    `@${found} stands alone in its branch; a junction goes between components.`,
  'junction twice': ({ found }) => `@${found} is named twice in the chain.`,
  'junction once': ({ found }) => `@${found} is named nowhere else, so nothing meets there.`,
  'same point': ({ found, about }) => `@${found} and @${about} are the same point; keep one.`,
  'placed in chain': ({ suggestion }) => `Placed components come at the end of the line: ${suggestion}.`,
  'across itself': ({ found }) => `${found} ends up across itself; place it across another component.`,
  'across several': ({ suggestion }) =>
    `Only one component can be named behind “across”; name the junctions at both ends of the group, and write ${suggestion}.`,
  'ends missing': ({ suggestion }) => `A network without a supply needs its two ends: ${suggestion}.`,
};
