import type { Component, Fuse, Resistor, Supply, Switch } from './model.ts';

/** What has a value, or one of two positions, to be set. */
export type Settable = Resistor | Supply | Fuse | Switch;

const kinds: readonly Component['kind'][] = ['resistor', 'supply', 'fuse', 'switch', 'push'];

/** Whether a component has something to set beyond its condition. */
export const isSettable = (component: Component): component is Settable => kinds.includes(component.kind);
