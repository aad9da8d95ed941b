import { Fraction } from '../quantity/index.ts';
import type { Component } from './model.ts';

const zero = new Fraction(0);

/**
 * The resistance of a component in ohms: of a lamp what is stated or follows from two ratings, of a supply its internal
 * resistance. Undefined for what conducts nothing: what is broken, an open switch, an ideal voltmeter.
 */
export function resistanceOf(component: Component): Fraction | undefined {
  if (component.condition === 'broken') return undefined;
  switch (component.kind) {
    case 'resistor':
      return component.resistance.value;
    case 'lamp': {
      if (component.resistance) return component.resistance.value;
      const [volts, watts, amperes] = [
        component.ratedVoltage,
        component.ratedPower,
        component.ratedCurrent,
      ].map((rating) => rating?.value);
      if (volts && watts) return volts.mul(volts).div(watts);
      if (volts && amperes) return volts.div(amperes);
      return watts && amperes ? watts.div(amperes.mul(amperes)) : undefined;
    }
    case 'supply':
      return component.internalResistance?.value ?? zero;
    case 'switch':
      return component.closed ? zero : undefined;
    case 'ammeter':
      return component.resistance?.value ?? zero;
    case 'voltmeter':
      return component.resistance?.value;
    case 'wire':
      return zero;
  }
}
