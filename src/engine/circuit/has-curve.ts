import type { Component, Diode, Lamp } from './model.ts';

/** What has no one resistance: its current is not proportional to its p.d. */
export type Curved = Lamp | Diode;

/** Whether a component's current is not proportional to its p.d. */
export function hasCurve(component: Component): component is Curved {
  const { kind } = component;
  return kind === 'diode' || kind === 'led' || (kind === 'lamp' && component.filament === true);
}
