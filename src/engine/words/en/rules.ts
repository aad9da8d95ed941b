import type { RuleData } from '../../rules/index.ts';
import type { Sentences } from '../language.ts';
import { all, subject } from './list.ts';

const signs = { '=': 'equals', '+': 'plus', '−': 'minus', '×': 'times', '<': 'is less than' };

/** The rules, why they apply or do not, and how an equation is said. */
export const rules: Sentences<RuleData> = {
  'series current': () => 'In series: the current is the same everywhere.',
  'series p.d.': ({ pd }) => `In series: the ${pd}s add up.`,
  'series resistance': () => 'In series: the resistances add up.',
  'parallel p.d.': ({ pd }) => `In parallel: the ${pd} across each branch is the same.`,
  'parallel current': () => 'In parallel: the currents in the branches add up.',
  'parallel resistance': () => 'In parallel: less resistance than any branch; the reciprocals add up.',
  'junction law': () => 'At a junction: as much current flows in as out.',
  'loop law': ({ pd }) => `Round a loop: the ${pd}s of the supplies equal the other ${pd}s.`,
  'V = IR': ({ pd }) => `Across a resistance: the ${pd} is current times resistance.`,
  'power balance': () => 'The supplies give the power that the rest takes.',

  'one path': ({ ids }) => `${all(ids)} follow one another on one path.`,
  'side by side': ({ ids }) => `${all(ids)} join the same two points.`,
  'one junction': ({ ids }) => `${all(ids)} meet at one junction.`,
  'closed loop': ({ ids }) => `${all(ids)} form a closed loop.`,
  resists: ({ ids }) => `${subject(ids, 'has', 'have')} a resistance.`,
  'energy is kept': () => 'Energy is conserved.',

  'current splits': ({ ids }) => `${all(ids)} are not in series: the current splits between them.`,
  bridge: ({ ids }) => `${all(ids)} form a bridge, which is neither series nor parallel.`,
  'nothing to add': ({ ids }) =>
    ids.length > 0
      ? `With ${all(ids)} taken out, no path has two parts to add up.`
      : 'No path here has two parts to add up.',
  'only one path': ({ ids, open }) =>
    ids.length > 0
      ? `With ${all(ids)} taken out, only one path is left.`
      : `There is only one path${open.length > 0 ? ` while ${subject(open)} open` : ''}.`,
  'taken out': ({ ids }) => `${subject(ids)} taken out: no current flows there.`,
  'supply inside': ({ ids }) => `With ${all(ids)} inside, the resistances alone do not decide.`,
  bypassed: ({ ids }) => `Without a resistance, ${all(ids)} takes the whole current.`,
  'not resistance': ({ ids }) => `${all(ids)} is a supply, not a resistance.`,
  'terminals apart': () => 'No path leads from one terminal to the other.',
  'not driven': () => 'Without a supply there is no current.',

  operator: ({ sign }) => signs[sign],
  reciprocal: ({ of }) => `1 over ${of}`,
  symbol: ({ letter, of }) => `${letter} of ${of}`,
  unknown: () => 'unknown',
  'wire across': ({ id }) => `wire across ${id}`,
};
