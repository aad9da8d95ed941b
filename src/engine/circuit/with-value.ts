import { Fraction, quantity, writeQuantity, type Quantity } from '../quantity/index.ts';
import { changedOver, isContact } from './changeover.ts';
import { checkRange } from './check-range.ts';
import { conditions, isCondition } from './condition.ts';
import { withFault } from './fault.ts';
import { exactNumber, refuse, refuseType, shown } from './fields.ts';
import { isSettable } from './is-settable.ts';
import { isTrack, slid } from './potentiometer.ts';
import { isSurrounding, withSurrounding } from './surroundings.ts';
import type { Circuit, Component, Condition, Fuse, Range, Supply } from './model.ts';
import { nearest } from './nearest.ts';
import { formOf, inForm } from './supply-form.ts';

/**
 * What a component may be set to: ohms, volts or amperes as a number or a fraction; a switch to true (closed) or false; or a text of words,
 * each of which sets one thing and leaves the rest: "20" or "1/3", "r 0.5" (the internal resistance of a supply), "open" or
 * "closed", "broken", "bridged" or "intact", "secretly broken", "secretly bridged" or "secretly intact" (what is wrong with it, for
 * a pupil to find), and together: "6 r 0.5 bridged".
 */
export type Setting = number | string | Fraction | boolean;

const conditionWords = [...conditions, 'intact'];

/** The number that a setting is. */
function exactly(id: string, setting: Setting): Fraction {
  // Not `instanceof Fraction`: another copy of the package on the page has a class of its own.
  const isFraction = setting instanceof Object && 'n' in setting;
  const exact = isFraction ? new Fraction(setting) : exactNumber(setting)?.exact;
  return exact ?? refuse(id, 'not a number', { found: shown(setting) });
}

/** The new value, written the way the old one was, with the decimals that it needs; checked against its range. */
function reset(id: string, old: Quantity, setting: Setting, range: Range | undefined): Quantity {
  const exact = exactly(id, setting);
  const value = quantity(exact, old.unit, old.prefix, old.decimals);
  if (old.unit === 'Ω' && exact.compare(0) < 0) {
    refuse(id, 'must not be negative', { found: writeQuantity(value).text });
  }
  if (range) checkRange(range, value, id);
  return value;
}

function withInside(supply: Supply, ohms: string): Supply {
  const { id, internalResistance = quantity(0, 'Ω'), internalRange } = supply;
  return { ...supply, internalResistance: reset(id, internalResistance, ohms, internalRange) };
}

/** A fuse that has blown, or a new one. */
function withBlown(fuse: Fuse, value: Setting): Fuse {
  const { blown, ...whole } = fuse;
  if (value === 'blown') return blown ? fuse : { ...fuse, blown: true };
  if (value === 'whole') return blown ? whole : fuse;
  return refuseType(fuse.id, 'blown or whole', value);
}

function withMain(component: Component, value: Setting): Component {
  const { id } = component;
  if (!isSettable(component)) return refuse(id, 'cannot be set', { id });
  switch (component.kind) {
    case 'switch':
    case 'push':
    case 'changeover': {
      const closed = value === true || value === 'closed';
      if (!closed && value !== false && value !== 'open') {
        refuseType(id, 'open or closed', value);
      }
      return { ...component, closed };
    }
    case 'resistor':
    case 'potentiometer':
      return { ...component, resistance: reset(id, component.resistance, value, component.range) };
    case 'source':
      return { ...component, current: reset(id, component.current, value, component.range) };
    case 'supply':
      // No setting makes another thing of it.
      return inForm(
        { ...component, emf: reset(id, component.emf, value, component.range) },
        formOf(component),
      );
    case 'fuse':
      return withBlown(component, value);
  }
}

/** The component in a condition, or in none. */
function withCondition(component: Component, condition: Condition | undefined): Component {
  const { condition: before, ...intact } = component;
  return before === condition ? component : condition ? { ...intact, condition } : intact;
}

/** Sets what each word of a text says; of each thing it says one at most. */
function withWords(component: Component, text: string): Component {
  const said = new Set<string>();
  const wrong = (found: string, suggestion = ''): never =>
    refuse(component.id, 'not a setting', { id: component.id, found: shown(found), suggestion });
  const once = (thing: string): void => {
    if (said.has(thing)) wrong(text);
    said.add(thing);
  };
  return (text.match(/\b(?:r|secretly)\s+\S+|\S+/g) ?? []).reduce((each, word) => {
    const [, before, rest = word] = /^(r|secretly)\s+(.*)/.exec(word) ?? [];
    if (before === 'r' && each.kind === 'supply') {
      once('r');
      return withInside(each, rest);
    }
    if (before !== 'r' && conditionWords.includes(rest)) {
      once(before ? 'fault' : 'condition');
      return (before ? withFault : withCondition)(each, isCondition(rest) ? rest : undefined);
    }
    once('value');
    const isMain = /^[-\d./]+$/.test(word) || word === 'open' || each.kind === 'fuse';
    const meant = isMain ? '' : nearest(word, conditionWords);
    return meant ? wrong(word, meant) : withMain(each, word);
  }, component);
}

/**
 * The same circuit with one component set anew: a resistor's ohms, a supply's e.m.f., internal resistance or constant current (each
 * within its range, on its steps), a switch (with a contact of a changeover switch its other one), a part of a potentiometer (with it the other one), a fuse ("blown" or "whole"), and
 * whether it is broken or bridged, openly or secretly; or, for an id, 'temperature' (°C) and 'light' (lx). The other components are the
 * same objects. Throws CircuitFormatError; its path is the id.
 */
export function withValue(circuit: Circuit, id: string, value: Setting): Circuit {
  if (isSurrounding(id)) return withSurrounding(circuit, id, exactly(id, value));
  const place = circuit.components.findIndex((component) => component.id === id);
  const component = circuit.components[place];
  if (!component) {
    const ids = circuit.components.map((other) => other.id);
    refuse(id, 'no such component', { id: shown(id), suggestion: nearest(id, ids) });
  }
  const set = typeof value === 'string' ? withWords(component, value) : withMain(component, value);
  const components = circuit.components.with(place, set);
  if (isContact(set)) return { ...circuit, components: changedOver(components, set) };
  const isSlid = isTrack(set) && isTrack(component);
  return { ...circuit, components: isSlid ? slid(components, component, set) : components };
}

/** The circuit as it is, with each changeover switch in turn at its other contact, and with each potentiometer that slides at either end. */
export const positions = (circuit: Circuit): readonly Circuit[] => [
  circuit,
  ...circuit.components.flatMap((each) => {
    const least = isTrack(each) ? each.range?.min.value : undefined;
    const to = isContact(each) && !each.closed ? 'closed' : least;
    return to ? [withValue(circuit, each.id, to)] : [];
  }),
];
