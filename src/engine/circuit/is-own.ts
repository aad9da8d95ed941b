import type { Component } from './model.ts';

/** Whether a quantity is a component's own value, which its circuit states: `R_R1`, `E_B1`, `r_B1`; `I_I1` of a constant current. */
export function isOwn({ id, kind }: Component, name: string): boolean {
  return name.slice(2) === id && (kind === 'source' ? /^I_/ : /^[REr]_/).test(name);
}
