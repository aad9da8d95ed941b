import { Fraction } from '../quantity/index.ts';
import type { Component, Surroundings } from './model.ts';
import { forwardPoint, ratedResistance } from './ratings.ts';
import { sensedResistance } from './sensor.ts';

const zero = new Fraction(0);

/**
 * The resistance of a component in ohms: of a supply its internal resistance, of a sensor what it has where it stands, of what has a
 * curve the one at its rating. Undefined for what conducts nothing by itself: what is broken, an open switch, a blown fuse, an ideal
 * voltmeter, a supply of constant current.
 */
export function resistanceOf(component: Component, surroundings?: Surroundings): Fraction | undefined {
  if (component.condition === 'broken') return undefined;
  switch (component.kind) {
    case 'resistor':
    case 'potentiometer':
      return component.resistance.value;
    case 'lamp':
    case 'heater':
    case 'motor':
      return ratedResistance(component);
    case 'diode':
    case 'led': {
      const [volts, amperes] = forwardPoint(component);
      return volts.value.div(amperes.value);
    }
    case 'thermistor':
    case 'ldr':
      return sensedResistance(component, surroundings);
    case 'supply':
      return component.internalResistance?.value ?? zero;
    case 'switch':
    case 'push':
    case 'changeover':
      return component.closed ? zero : undefined;
    case 'fuse':
      return component.blown ? undefined : (component.resistance?.value ?? zero);
    case 'ammeter':
      return component.resistance?.value ?? zero;
    case 'voltmeter':
      return component.resistance?.value;
    case 'source':
      return undefined;
    case 'wire':
      return zero;
  }
}
