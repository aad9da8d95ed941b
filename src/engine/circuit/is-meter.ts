import type { Component, Meter } from './model.ts';

/** Whether a component is an ammeter or a voltmeter. */
export function isMeter(component: Component): component is Meter {
  return component.kind === 'ammeter' || component.kind === 'voltmeter';
}
