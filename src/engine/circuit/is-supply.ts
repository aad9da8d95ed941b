import type { Component, CurrentSource, Supply } from './model.ts';

/** Whether a component drives a current: a supply of an e.m.f., or one of constant current. */
export function isSupply(component: Component): component is Supply | CurrentSource {
  return component.kind === 'supply' || component.kind === 'source';
}
