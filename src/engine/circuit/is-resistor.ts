import type { Component, Resistor, Track } from './model.ts';

/** Whether a component is there for its resistance: a resistor, or a part of a potentiometer. */
export const isResistor = (component: Component): component is Resistor | Track =>
  component.kind === 'resistor' || component.kind === 'potentiometer';
