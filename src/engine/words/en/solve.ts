import type { CautionData, FaultData, ReasonData, RemarkData } from '../../solve/index.ts';
import type { Sentences } from '../language.ts';
import { did } from './did.ts';
import { all, any, subject, them } from './list.ts';

/** A caution ends with whom to follow and to ask. */
const caution = (text: string): string =>
  `Caution: ${text} Follow local rules and the equipment’s instructions, and ask qualified staff.`;

/** Faults, remarks, cautions, and why a quantity has no value. */
export const solve: Sentences<FaultData & RemarkData & CautionData & ReasonData> = {
  'short circuit': ({ supplies, path }) =>
    `${subject(supplies)} short-circuited${path.length > 0 ? ` through ${all(path)}` : ''}: nothing limits the current. Put a resistance in the way, or open the path.`,
  'supplies in contradiction': ({ supplies }) =>
    `${all(supplies)} put different numbers of volts between the same two points, which cannot both be true. Give one of them an internal resistance.`,
  'share undetermined': ({ ids }) =>
    `${ids.length === 1 ? `${all(ids)} and the wire across it` : all(ids)} are joined without any resistance, so how the current shares between them is not determined. Leave one out, or give one a resistance.`,
  'not as marked': () =>
    'This cannot be worked out from what the components are marked with: one of them here is not as it is marked.',
  'current without a path': ({ id, at }) =>
    `${id} is to send a constant current, but ${at.length > 0 ? `none can pass ${any(at)}` : 'no closed path leads through it'}. Let it pass, or leave ${id} out.`,
  'currents in contradiction': ({ supplies }) =>
    `${all(supplies)} set different currents in one path, which cannot both be true. Put a component across one of them, or leave one out.`,
  'p.d. undetermined': ({ supplies }) =>
    `${all(supplies)} set the same current in one path, so how many volts each has is not determined. Leave one out, or put a component across one.`,
  'not ohmic': ({ ids }) =>
    `${subject(ids, 'does', 'do')} not obey Ohm’s law: there is no one resistance, and no exact fraction, to give.`,
  'not settled': ({ ids }) =>
    `The readings of ${all(ids)} could not be settled; change a value a little and try again.`,
  'too many loops': ({ count, limit }) =>
    `This circuit has ${count} independent loops, more than the ${limit} that can be solved here.`,
  'open loop': ({ at }) =>
    at.length > 0
      ? `No current: the circuit is open at ${all(at)}.`
      : 'No current: no closed path leads through a supply.',
  'cut off': ({ ids }) => `${subject(ids)} cut off from any supply: no current there.`,
  'voltmeter in series': ({ id, other }) =>
    `${id} is in series with ${other}: a voltmeter lets next to nothing through, so it belongs across a component.`,
  'ammeter across': ({ meters, others, ideal }) =>
    `${subject(meters)} across ${all(others)}: ${ideal ? 'an ideal ammeter has no resistance, so no current' : 'an ammeter has next to no resistance, so hardly any current'} goes through ${any(others)}, and the reading is not the current there. Put ${them(meters)} in series with ${others.length > 1 ? 'one of them' : all(others)}.`,
  'cells in opposition': ({ id, other }) =>
    `${id} and ${other} are joined at like poles: their e.m.f.s work against each other. Turn one round if they are to help.`,
  'loose end': ({ id, both }) =>
    `${id} is joined to nothing at ${both ? 'both ends' : 'one end'}. Join it, or leave it out.`,
  blown: ({ id }) => `${id} has blown: nothing flows through it. Find out why before another is put in.`,
  'fuse too large': ({ id }) =>
    `${id} is made for far more than flows here, so it would let a fault burn on. Choose the next rating above the current.`,
  'turned against': ({ id }) =>
    `${id} is turned against the current, so it lets next to nothing through. Turn it round if it is to conduct.`,
  broken: ({ ids }) => `${subject(ids)} taken out: nothing flows through ${them(ids)}.`,
  bridged: ({ ids }) =>
    `${ids.length === 1 ? 'A wire is' : 'Wires are'} across ${all(ids)}, so current can go round ${them(ids)}.`,
  'cell shorted': ({ supplies }) =>
    caution(
      `${subject(supplies)} short-circuited. In reality that can get hot, vent or start a fire; do not build it.`,
    ),
  'over its rating': ({ id, power, rating }) =>
    caution(`${id} takes ${power}, more than its rating of ${rating}; it can burn.`),
  'track overloaded': ({ id, current, most, rating }) =>
    caution(
      `${id} carries ${current}, more than the ${most} that its track may carry anywhere (${rating} over its whole length); it can burn.`,
    ),
  'fuse would blow': ({ id, current, rating }) =>
    caution(
      `${id} carries ${current}, more than its rating of ${rating}: the real one blows. Find out why before another is put in.`,
    ),
  'led overloaded': ({ id, current, rating }) =>
    caution(
      `${id} carries ${current}, more than its rating of ${rating}: it burns out. Put a resistance in series.`,
    ),
  'driven backwards': ({ id }) =>
    caution(
      `a current is driven backwards through ${id}; a cell that is not made to be charged can get hot, leak or burst.`,
    ),
  'ammeter across a supply': ({ meters, supplies }) =>
    caution(
      `${subject(meters)} straight across ${all(supplies)}; an ammeter has next to no resistance, so they can be damaged. Put ${them(meters)} in series.`,
    ),
  'not extra-low voltage': ({ limit }) =>
    caution(`more than ${limit} is above what schools treat as extra-low voltage; do not build it.`),
  'circuit has a fault': () => 'The circuit has a fault, so there is no reading.',
  'no such quantity': ({ name, suggestion }) =>
    `“${name}” is not a quantity of this circuit${did(suggestion)}`,
  'several supplies': ({ name, instead }) =>
    `${name} is not defined with several supplies; ask for ${any(instead)}.`,
  'of two parts': ({ id, instead }) =>
    `The two parts of ${id} may carry different currents; ask for ${any(instead)}.`,
  'no supply': ({ name }) => `${name} is not defined without a supply.`,
  'no path': () => 'no path for a current',
  'no current': () => 'no current',
  'no steady reading': () => 'no steady reading',
  'no finite resistance': ({ id }) => `${id} conducts nothing, so its resistance is not a number.`,
};
