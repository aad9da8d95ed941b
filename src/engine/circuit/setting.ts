import { exactText } from '../quantity/index.ts';
import { isSettable } from './is-settable.ts';
import type { Component } from './model.ts';

function values(component: Component): readonly string[] {
  if (!isSettable(component)) return [];
  switch (component.kind) {
    case 'resistor':
    case 'potentiometer':
      return [exactText(component.resistance.value)];
    case 'source':
      return [exactText(component.current.value)];
    case 'supply': {
      const inside = component.internalResistance;
      return [exactText(component.emf.value), ...(inside ? [`r ${exactText(inside.value)}`] : [])];
    }
    case 'fuse':
      return [component.blown ? 'blown' : 'whole'];
    case 'switch':
    case 'push':
    case 'changeover':
      return [component.closed ? 'closed' : 'open'];
  }
}

/**
 * What a component is set to, as the exact text that `withValue` reads: "20", "6 r 0.5", "closed", "20 broken"; "" for what has
 * nothing to set and nothing done to it. With a start, only what differs from it: "r 0.5", "broken", "intact"; "" where nothing does.
 */
export function settingOf(component: Component, start?: Component): string {
  const condition = component.condition ?? (start?.condition && 'intact');
  const before = start ? [...values(start), start.condition] : [];
  return [...values(component), condition].filter((word) => word && !before.includes(word)).join(' ');
}
