import { circuitToJSON, type Component } from '../../engine/index.ts';

/** What a component is set to: ohms or volts as an exact text, "open" or "closed"; undefined for what cannot be set. */
export function settingOf(component: Component): string | undefined {
  if (component.kind === 'switch') return component.closed ? 'closed' : 'open';
  if (component.kind !== 'resistor' && component.kind !== 'supply') return undefined;
  const [json] = circuitToJSON({ components: [component] }).components;
  const exact = json?.[component.kind === 'supply' ? 'emf' : 'resistance'];
  return typeof exact === 'string' ? exact : undefined;
}
