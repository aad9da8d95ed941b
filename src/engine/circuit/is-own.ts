import type { Component } from './model.ts';

/** Whether a quantity is a component's own value, which its circuit states: `R_R1`, `E_B1`, `r_B1`; `I_I1` of a constant current; of a part of a potentiometer also the whole's, which would tell it. */
export function isOwn({ id, kind }: Component, name: string): boolean {
  if (kind === 'potentiometer' && name === `R_${id.slice(0, -1)}`) return true;
  return name.slice(2) === id && (kind === 'source' ? /^I_/ : /^[REr]_/).test(name);
}
