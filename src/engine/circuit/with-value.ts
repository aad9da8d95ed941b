import { Fraction, quantity, writeQuantity, type Quantity } from '../quantity/index.ts';
import { checkRange } from './check-range.ts';
import { exactNumber, refuse, shown } from './fields.ts';
import type { Circuit, Component } from './model.ts';
import { nearest } from './nearest.ts';

/** What a component may be set to: ohms or volts as a number, an exact text or a fraction; a switch to open or closed. */
export type Setting = number | string | Fraction | boolean;

function number(id: string, value: Setting): Fraction {
  const exact = value instanceof Fraction ? value : exactNumber(value)?.exact;
  return exact ?? refuse(id, { code: 'not a number', data: { found: shown(value) } });
}

/** The new value, written the way the old one was, with the decimals that it needs. */
function like(old: Quantity, value: Fraction): Quantity {
  return quantity(value, old.unit, old.prefix, old.decimals);
}

function set(component: Component, value: Setting): Component {
  const { id } = component;
  switch (component.kind) {
    case 'switch': {
      const closed = value === true || value === 'closed';
      if (!closed && value !== false && value !== 'open') {
        refuse(id, { code: 'wrong type', data: { expected: 'open or closed', found: shown(value) } });
      }
      return { ...component, closed };
    }
    case 'resistor': {
      const resistance = like(component.resistance, number(id, value));
      if (resistance.value.compare(0) < 0) {
        refuse(id, { code: 'must not be negative', data: { found: writeQuantity(resistance).text } });
      }
      return checkRange({ ...component, resistance }, id);
    }
    case 'supply':
      return { ...component, emf: like(component.emf, number(id, value)) };
    case 'lamp':
    case 'ammeter':
    case 'voltmeter':
    case 'wire':
      return refuse(id, { code: 'cannot be set', data: { id } });
  }
}

/**
 * The same circuit with one component set anew: a resistor's ohms (within its range, on its steps), a supply's e.m.f., a switch
 * ('open', 'closed'). The other components are the same objects. Throws CircuitFormatError; its path is the id.
 */
export function withValue(circuit: Circuit, id: string, value: Setting): Circuit {
  const place = circuit.components.findIndex((component) => component.id === id);
  const component = circuit.components[place];
  if (!component) {
    const ids = circuit.components.map((other) => other.id);
    refuse(id, { code: 'no such component', data: { id: shown(id), suggestion: nearest(id, ids) } });
  }
  const components = circuit.components.with(place, set(component, value));
  return { ...circuit, components };
}
