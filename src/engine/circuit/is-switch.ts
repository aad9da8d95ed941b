import type { Component, Switch } from './model.ts';

/** Whether a component is there to be opened and closed. */
export const isSwitch = (component: Component): component is Switch =>
  component.kind === 'switch' || component.kind === 'push' || component.kind === 'changeover';
