import { faultIn, resistanceOf, type Circuit, type Component } from '../circuit/index.ts';

/** One end of a component. */
export interface End {
  readonly id: string;
  /** Which of its ends is here; its current is positive from `from` to `to`, a supply's the other way round. */
  readonly end: 'from' | 'to';
}

/** A node where three or more branches meet. */
export interface Junction {
  readonly node: string;
  /** In the order of the circuit's components. */
  readonly ends: readonly End[];
}

/** Whether a component is an ideal voltmeter, which only looks on (or any that is taken out). */
export const looksOn = (component: Component): boolean =>
  component.kind === 'voltmeter' && resistanceOf(component) === undefined && faultIn(component) !== 'bridged';

/**
 * The nodes where three or more branches meet, ideal voltmeters left out. Nodes joined by a wire, a closed switch or an
 * ideal ammeter stay apart: the current in that counts as a branch's.
 */
export function junctions({ components }: Circuit): readonly Junction[] {
  const ends = new Map<string, End[]>();
  const meet = (node: string, id: string, end: End['end']): void => {
    const here = ends.get(node);
    if (here) here.push({ id, end });
    else ends.set(node, [{ id, end }]);
  };
  for (const component of components) {
    if (looksOn(component) || component.from === component.to) continue;
    meet(component.from, component.id, 'from');
    meet(component.to, component.id, 'to');
  }
  return [...ends].filter(([, here]) => here.length > 2).map(([node, here]) => ({ node, ends: here }));
}
