import { faultIn, hasFault, type Circuit } from '../circuit/index.ts';
import type { Reasoning } from './codes.ts';
import type { Relation } from './relation.ts';
import { isJoin } from './structure.ts';

const ofCurrents: readonly Reasoning[] = [
  'same current',
  'no closed path',
  'currents add',
  'currents at a junction',
  'power',
  'energy and time',
  'charge and time',
  'energy and charge',
];
const ofVoltages: readonly Reasoning[] = ['same p.d.', 'p.d.s add', 'p.d.s round a loop'];

/**
 * Which relations hold whatever is secretly wrong with a component: those of currents, and of p.d.s as long as what only joins does so.
 * All of them where nothing is wrong.
 */
export function holdsIn(circuit: Circuit): (relation: Relation) => boolean {
  if (!hasFault(circuit)) return () => true;
  const doJoin = !circuit.components.some((each) => faultIn(each) === 'broken' && isJoin(each));
  const rules = doJoin ? [...ofCurrents, ...ofVoltages] : ofCurrents;
  return ({ rule }) => rules.includes(rule);
}
