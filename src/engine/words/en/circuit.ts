import type { FormatData } from '../../circuit/index.ts';
import type { Sentences } from '../language.ts';
import { did } from './did.ts';

/** What can be wrong with a circuit, however it is given, or with a new value. */
export const circuit: Sentences<FormatData> = {
  'wrong type': ({ expected, found }) => `Expected ${expected}, found ${found}.`,
  'label used twice': ({ id }) => `${id} is the label of two components; give one of them another number.`,
  'not a number': ({ found }) => `"${found}" is not a number that can be read; write 4.7 or 1/3.`,
  'out of range': ({ found, low, high }) => `${found} is outside ${low} to ${high}.`,
  'not below': ({ found, high }) => `This must be less than ${high}, not ${found}.`,
  'not on a step': ({ found, nearest }) => `${found} is not one of the settings; the nearest is ${nearest}.`,
  'must be positive': ({ found }) => `This must be more than 0, not ${found}.`,
  'must not be negative': ({ found }) => `This must be 0 or more, not ${found}.`,
  'no step fits': ({ low, high }) =>
    `No even step leads from ${low} through this value to ${high}; write one.`,
  'lamp needs two ratings': ({ id }) =>
    `${id} needs its resistance, or two of its voltage, power and current.`,
  'filament needs two ratings': ({ id }) =>
    `The filament of ${id} has no one resistance: give it two of its voltage, power and current.`,
  'contact missing': ({ id, other }) =>
    other
      ? `${id} is one contact of a changeover switch; the other one, ${other}, is missing.`
      : `The two contacts of a changeover switch have labels such as S1a and S1b, not ${id}.`,
  'contacts apart': ({ id, other }) =>
    `${id} and ${other} do not meet; the contacts of a changeover switch share its common terminal.`,
  'contacts alike': ({ id, other }) =>
    `A changeover switch stands at one of its contacts: write one of ${id} and ${other} closed, and the other one open.`,
  'part missing': ({ id, other }) =>
    other
      ? `${id} is one part of a potentiometer; the other one, ${other}, is missing.`
      : `The two parts of a potentiometer, on either side of its contact, have labels such as R1a and R1b, not ${id}.`,
  'parts apart': ({ id, other }) =>
    `${id} and ${other} do not meet; the two parts of a potentiometer share its sliding contact.`,
  'parts at odds': ({ id, other }) =>
    `What ${id} and ${other} state does not fit together; give the range and the power rating of a potentiometer once, with ${id}.`,
  'track without resistance': ({ id, other }) =>
    `${id} and ${other} are both of 0 Ω; give the whole track of a potentiometer a resistance.`,
  'scale of a track': ({ id }) =>
    `The contact of a potentiometer slides in even steps; write the range of ${id} with a step, or with none.`,
  'terminals with a supply': () => 'A circuit with a supply has no terminals; leave them out.',
  'too many components': ({ count, limit }) =>
    `${count} components are more than the ${limit} that can be read.`,
  'no such component': ({ id, suggestion }) => `There is no ${id} in this circuit${did(suggestion)}`,
  'cannot be set': ({ id }) => `${id} has no value to set; it can be broken, bridged or intact.`,
  'not a setting': ({ id, found, suggestion }) => `"${found}" is not a setting of ${id}${did(suggestion)}`,
};
