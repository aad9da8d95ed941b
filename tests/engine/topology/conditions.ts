import type { Circuit, Component, Condition } from '../../../src/engine/circuit/index.ts';

/** The same circuit with some components taken out or bridged, and all others whole. */
export function withConditions(
  circuit: Circuit,
  conditionOf: (component: Component, place: number) => Condition | undefined,
): Circuit {
  const components = circuit.components.map((component, place) => {
    const { condition: old, ...whole } = component;
    const condition = conditionOf(component, place);
    return condition === old ? component : condition ? { ...whole, condition } : whole;
  });
  return { ...circuit, components };
}
