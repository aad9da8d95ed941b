import type { DescriptionData, Phrase } from '../../schematic/index.ts';
import type { Sentences } from '../language.ts';
import { all } from './list.ts';

const counts = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

const ways = {
  '': '',
  'turned round': ', turned round',
  'positive first': ', its positive terminal first',
  'positive last': ', its positive terminal last',
};
const conditions = { broken: ', taken out', bridged: ', with a wire across it' };

const within = (range: readonly string[]): string =>
  range.length > 0 ? ` (from ${range.join(' to ')})` : '';

function inOrder(parts: readonly Phrase[]): string {
  return parts.reduce((said, { text }, i) => {
    if (i === 0) return text;
    const join = parts[i - 1]?.join ?? [];
    return `${said}${join.length > 0 ? `; where branches ${all(join)} join, ` : ', then '}${text}`;
  }, '');
}

function between({ text, from, to, back }: DescriptionData['web']['parts'][number]): string {
  if (text === '') return `the terminals are at junctions ${to} and ${from}`;
  if (back) return `from junction ${from} back to it, ${text}`;
  return `from junction ${from} to junction ${to}, ${text}`;
}

/** Where a point is, by the components there. */
const place = (ids: readonly string[]): string =>
  ids.length > 1 ? `where ${all(ids)} meet` : `at an end of ${all(ids)}`;

/** The diagram in words, as a teacher reads it aloud. */
export const describe: Sentences<DescriptionData> = {
  part: ({ name, id, values, internal, range, internalRange, way, condition }) =>
    `${name} ${id}${values.length > 0 ? ` of ${all(values)}` : ''}` +
    within(range) +
    (internal && ` with internal resistance ${internal}`) +
    within(internalRange) +
    ways[way] +
    (condition ? conditions[condition] : ''),
  chain: ({ parts }) => inOrder(parts),
  branches: ({ branches, meters }) =>
    `${counts[branches.length] ?? branches.length} parallel branches` +
    `${meters.length > 0 ? `, with ${all(meters)} across them` : ''}: ` +
    branches.map(({ number, text }) => `branch ${number} is ${text}`).join('; '),
  across: ({ text, meters, several }) =>
    `${text}, with ${all(meters)} across ${several.length > 0 ? `${all(several)} together` : 'it'}`,
  loop: ({ supply, id, parts }) =>
    `From the positive terminal of ${supply}: ${inOrder([...parts, { text: `back to ${id}`, join: [] }])}.`,
  network: ({ text }) => `Between two terminals: ${text}.`,
  'joined branches': ({ across, branches }) =>
    `a bridge of ${counts[branches.length] ?? branches.length} branches, with ${across} between their middles: ` +
    branches.map(({ number, text }) => `branch ${number} is ${text}`).join('; '),
  web: ({ parts }) =>
    `Not series and parallel throughout; with its junctions numbered: ${parts.map(between).join('; ')}.`,
  points: ({ points }) => points.map(({ name, ids }) => `Point ${name} is ${place(ids)}.`).join(' '),
  'zero mark': ({ ids }) => `The 0 V mark is ${place(ids)}.`,
  pieces: ({ texts }) =>
    texts.length > 1 ? `${texts.length} pieces that nothing joins. ${texts.join(' ')}` : texts.join(' '),
};
