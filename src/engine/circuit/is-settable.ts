import type { Component, CurrentSource, Fuse, Resistor, Supply, Switch, Track } from './model.ts';

/** What has a value, or one of two positions, to be set. */
export type Settable = Resistor | Track | Supply | CurrentSource | Fuse | Switch;

const kinds: readonly Component['kind'][] = [
  'resistor',
  'potentiometer',
  'supply',
  'source',
  'fuse',
  'switch',
  'push',
  'changeover',
];

/** Whether a component has something to set beyond its condition. */
export const isSettable = (component: Component): component is Settable => kinds.includes(component.kind);
