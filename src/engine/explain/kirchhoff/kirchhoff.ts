import { isSupply, type Circuit } from '../../circuit/index.ts';
import { looksOn } from '../../topology/index.ts';
import { mostEquations, type EquationSetter } from '../equations.ts';
import type { Said } from '../../reasons/index.ts';
import type { Course } from '../../words/index.ts';
import { branchesOf, type Branch } from './branches.ts';
import type { Neighbour } from '../codes.ts';
import type { Step } from '../derivation.ts';
import { leadingTo, type Draft } from './draft.ts';
import { eliminate } from './eliminate.ts';
import { networkOf } from './network.ts';
import { placeOf } from '../relation.ts';
import { along, needs, setUp, type Ground } from './set-up.ts';
import { isDriver, points } from '../structure.ts';
import { noted } from '../step.ts';
import { why } from '../why.ts';
import { styleOf, symbol, valueText } from '../write.ts';

/** What stands beside a branch at one of its ends. */
function neighbours(
  { components }: Circuit,
  point: (node: string) => string,
  own: readonly string[],
  node: string,
) {
  return components.flatMap((one): readonly Neighbour[] => {
    const side = [one.from, one.to].map(point).indexOf(node);
    if (side < 0 || own.includes(one.id) || looksOn(one)) return [];
    return [{ id: one.id, side: !isSupply(one) ? '' : side === 0 ? '+' : '−' }];
  });
}

/** The way that the current of a branch is counted: through the part that it is called after. */
function counted(circuit: Circuit, branch: Branch, course: Course): Said<'current counted'> {
  const { current, passed } = branch;
  const name = symbol(current, course);
  const named = passed.find(({ part }) => `I_${part.label}` === current);
  const id = named?.part.label ?? '';
  if (!named || isDriver(named.part))
    return { code: 'current counted', data: { name, id, from: [], to: [] } };
  const beside = (node: string) => neighbours(circuit, points(circuit), named.part.about, node);
  const data = { name, id: placeOf(current), from: beside(named.tail), to: beside(named.head) };
  return { code: 'current counted', data };
}

/** Drafts as steps: equations get their numbers in the order in which they come. */
function numbered(drafts: readonly Draft[], course: Course): readonly Step[] {
  const numbers = new Map<string, string>();
  for (const { gives, value } of drafts) if (!value) numbers.set(gives, `(${numbers.size + 1})`);
  const called = (name: string): string => numbers.get(name) ?? name;
  return drafts.map(
    ({ rule, about, uses, gives, equation, rearranged, substituted, names, value, says }) => ({
      rule,
      about: [...new Set(about)],
      uses: uses.map(called),
      gives: called(gives),
      equation,
      rearranged,
      substituted,
      value: value ?? says.number,
      text: value ? valueText(gives, value, styleOf(course)) : substituted,
      why: why(rule, names.map(called), course),
      ...(!value && { unknowns: [...says.of.keys()] }),
    }),
  );
}

/** Kirchhoff's laws for a circuit, for `equipEquations`. */
export const kirchhoff: EquationSetter = (circuit, value, isReal, find, course) => {
  const branches = branchesOf(circuit);
  const network = networkOf(branches, isReal, value);
  const { chords, given: others } = network;
  const [first] = chords;
  if (chords.length + others.length < 2 || !first) return undefined;
  const name = (one: string): string => symbol(one, course);
  const ground: Ground = { network, value, isReal, name, style: styleOf(course) };
  const whole = { count: chords.length, loop: network.loop(first).flatMap(([one]) => along(one)) };
  if (chords.length > mostEquations) {
    const way = () => ({ uses: [], steps: [] });
    return { ...whole, needs: [], isEnough: true, currents: new Map(), way };
  }
  const laws = setUp(ground);
  const loopLaws = laws.filter(({ alone }) => alone === undefined);
  const asked = branches.find((one) => along(one).includes(find.replace(/^[^_]*_/, '')));
  const junctions = laws.filter((law) => !loopLaws.includes(law));
  const drafts = [...laws, ...eliminate(loopLaws, junctions, asked?.current ?? '', ground)];
  const way = (currents: readonly string[]) => {
    const own = leadingTo(drafts, currents);
    const given = new Set(own.map(({ gives }) => gives));
    const shown = new Set(own.flatMap(({ says, alone = '' }) => [alone, ...says.of.keys()]));
    const unknowns = chords
      .map(({ current }) => current)
      .filter((one) => shown.has(one))
      .map(name);
    const set: Said<'equations set up'> = { code: 'equations set up', data: { find: name(find), unknowns } };
    const counts = branches
      .filter(({ current }) => shown.has(current))
      .map((one) => counted(circuit, one, course));
    const steps = numbered(own, course).map((step, index) =>
      index === 0 ? { ...step, notes: [set, ...counts] } : noted(step, course),
    );
    return { uses: [...new Set(own.flatMap(({ uses }) => uses))].filter((one) => !given.has(one)), steps };
  };
  const currents = new Map(
    drafts.flatMap(({ gives, value: found }) => (found ? [[gives, found] as const] : [])),
  );
  const isEnough = loopLaws.length === chords.length;
  return { ...whole, needs: needs(ground), isEnough, currents, way };
};
