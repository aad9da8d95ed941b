import type { ExplainData, Neighbour } from '../../explain/index.ts';
import type { Sentences } from '../../words/index.ts';
import { all as list } from '../../words/index.ts';

/** Components and blocks, what is outside the supply as a whole, and two points: `p_q`. */
const all = (ids: readonly string[]): string =>
  list(
    ids.map((id) =>
      id === 'total'
        ? 'the whole circuit outside the supply'
        : id.replace(/^(.+)_(.+)$/, 'the points $1 and $2'),
    ),
  );

const ends = (some: readonly Neighbour[]): string =>
  list(some.map(({ id, side }) => (side ? `the ${side} end of ${id}` : id)));

/** Derivations: why each step may be taken, and why there is none. */
export const explain: Sentences<ExplainData> = {
  'same current': ({ ids }) => `The same current flows through ${all(ids)}.`,
  'same p.d.': ({ ids, pd }) => `The ${pd} is the same across ${all(ids)}.`,
  'resistances in series': ({ ids }) =>
    ids.length > 1
      ? `${all(ids)} are in series: their resistances add up.`
      : `${all(ids)} is all that the current has to pass.`,
  'resistances in parallel': ({ ids }) =>
    `${all(ids)} are in parallel: the reciprocals of the resistances add up.`,
  'product over sum': ({ ids }) =>
    `${all(ids)} are two in parallel: together they have the product of their resistances over the sum.`,
  'trial p.d.': ({ ids, pd }) =>
    `Think of one ${pd} across ${all(ids)} side by side: their currents add up, and the ${pd} over the whole current is their resistance together.`,
  'p.d.s add': ({ ids, pd }) => `${all(ids)} follow one another: the ${pd}s add up.`,
  'currents add': ({ ids }) => `${all(ids)} are side by side: the currents add up.`,
  'potential divider': ({ ids: [part = '', whole = ''], pd }) =>
    `${all([part])} takes the same share of the ${pd} across ${all([whole])} as of its resistance.`,
  'p.d. is current times resistance': ({ ids, pd }) => `For ${all(ids)}: ${pd} is current times resistance.`,
  power: ({ ids, pd }) => `For ${all(ids)}: power is ${pd} times current.`,
  'power from current': ({ ids }) => `For ${all(ids)}: power is current squared times resistance.`,
  'power from p.d.': ({ ids, pd }) => `For ${all(ids)}: power is ${pd} squared over resistance.`,
  'power of the e.m.f.': ({ ids }) => `For ${all(ids)}: power is e.m.f. times current.`,
  'power is conserved': () => 'The power that the e.m.f. gives is all taken up in the circuit.',
  'e.m.f.s in series': ({ ids }) =>
    `${all(ids)} follow one another: their e.m.f.s add up, less those that point the other way.`,
  'internal resistance in series': () => 'The internal resistance is in series with the rest of the circuit.',
  'e.m.f. round the loop': () => 'Round the whole circuit, the e.m.f. is current times all the resistance.',
  'e.m.f. and internal resistance': ({ ids, pd }) =>
    `For ${all(ids)}: part of the e.m.f. is the ${pd} across the internal resistance.`,
  'balanced bridge': ({ ids: [one = '', two = '', three = '', four = '', middle = ''] }) =>
    `The bridge is balanced: ${one} is to ${two} as ${three} is to ${four}, and nothing drives a current through ${middle}.`,
  'trial supply': ({ ids, pd }) =>
    `Think of a supply ${all(ids)} between the terminals: its ${pd} over its current is the resistance between them.`,
  'no closed path': ({ ids }) => `No closed path leads through ${all(ids)}: no current flows there.`,
  'passed by': ({ ids: [id = '', ...past] }) =>
    `No current flows through ${all([id])}: ${all(past)} ${past.length > 1 ? 'lead' : 'leads'} round it without resistance.`,
  'whole track': ({ ids }) => `${all(ids)} are the two parts of one track.`,
  rating: ({ ids }) => `What is marked on ${all(ids)} gives its resistance.`,
  'no internal resistance': ({ ids, pd }) =>
    `Without internal resistance, the ${pd} across ${all(ids)} is the e.m.f.`,
  'p.d.s round a loop': ({ ids }) =>
    `Round the loop of ${all(ids)} the potential comes back to where it was: it falls as far as it rises.`,
  'energy and time': ({ ids }) => `For ${all(ids)}: energy is power times time.`,
  'charge and time': ({ ids }) => `For ${all(ids)}: charge is current times time.`,
  'energy and charge': ({ ids, pd }) => `For ${all(ids)}: energy is ${pd} times charge.`,
  'currents at a junction': ({ ids }) => `Where ${all(ids)} meet, as much current flows in as out.`,
  'e.m.f.s round a loop': ({ ids, pd }) =>
    `Round the loop of ${all(ids)}, the e.m.f.s together are as much as the ${pd}s together.`,
  'one alone': ({ ids: [equation = '', current = ''] }) => `Equation ${equation} with ${current} alone.`,
  'put in': ({ ids: [one = '', equation = ''] }) => `Put ${one} into equation ${equation}.`,
  'one unknown left': ({ ids: [equation = '', current = ''] }) =>
    `In equation ${equation} only ${current} is unknown.`,
  'put back': ({ ids: [equation = '', ...currents] }) => `Put ${list(currents)} into equation ${equation}.`,
  'look at': ({ ids }) => `Look at ${all(ids)}.`,
  'hint equation': ({ equation }) => equation,
  'hint numbers': ({ equation }) => equation,
  'hint answer': ({ answer }) => answer,
  'one is missing': ({ find, missing }) => `To find ${find}, ${missing} is missing.`,
  'not enough known': ({ find }) => `Too little is known to find ${find}.`,
  'readings disagree': ({ names }) =>
    `${list(names)} cannot ${names.length > 1 ? 'all be right: they disagree' : 'be right'}.`,
  'needs a rule': ({ find, rule }) => `To find ${find}, this rule is needed. ${rule}`,
  'too large to explain': ({ count, limit }) =>
    `Circuits of up to ${limit} components are explained; this one has ${count}.`,
  'too many equations': ({ count, limit }) =>
    `This needs ${count} equations solved together; by hand, ${limit} are enough.`,
  'equations set up': ({ find, unknowns }) =>
    `No rule alone leads to ${find}: Kirchhoff’s laws give ` +
    (unknowns.length > 1
      ? `as many equations as there are unknown currents, ${list(unknowns)}.`
      : `an equation for the one unknown current, ${list(unknowns)}.`),
  'current counted': ({ name, id, from, to }) =>
    from.length > 0 && to.length > 0
      ? `${name} is counted through ${id} from ${ends(from)} to ${ends(to)}.`
      : `${name} is counted out of the + end of ${id}.`,
  'left out': ({ id }) => `No current flows through ${id}: the rest is what it would be without it.`,
  'flows the other way': ({ name }) => `${name} is negative: this current flows the other way.`,
};
