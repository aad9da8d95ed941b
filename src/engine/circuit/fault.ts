import { Fraction } from '../quantity/index.ts';
import type { Circuit, Component, Condition } from './model.ts';
import { resistanceOf } from './resistance.ts';

/** The component with a secret fault, or with none. */
export function withFault(component: Component, fault: Condition | undefined): Component {
  const { fault: before, ...sound } = component;
  return before === fault ? component : fault ? { ...sound, fault } : sound;
}

/** Whether anything is secretly wrong with a circuit. */
export const hasFault = ({ components }: Circuit): boolean => components.some(({ fault }) => fault);

/** The circuit that is drawn: the same with no secret fault in it. */
export const asMarked = (circuit: Circuit): Circuit =>
  hasFault(circuit)
    ? { ...circuit, components: circuit.components.map((each) => withFault(each, undefined)) }
    : circuit;

/** The fault that counts: a wire across a component, or its being taken out, leaves it none. */
export const faultIn = ({ fault, condition }: Component): Condition | undefined =>
  condition ? undefined : fault;

/**
 * The resistance that a component has in truth, in ohms; `resistanceOf` tells the one that it is marked with. Undefined for what
 * conducts nothing.
 */
export function actualResistance(
  component: Component,
  surroundings?: Circuit['surroundings'],
): Fraction | undefined {
  const fault = faultIn(component);
  if (fault === 'broken') return undefined;
  return fault ? new Fraction(0) : resistanceOf(component, surroundings);
}
