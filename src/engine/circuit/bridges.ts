import type { Circuit, Wire } from './model.ts';

/**
 * The circuit with the wires that bridge its components as components beside them: L1 is bridged by the wire "L1 bridge", an id
 * that no label can be. The same circuit where nothing is bridged, or where its bridges stand in it already.
 */
export function bridges(circuit: Circuit): Circuit {
  const { components } = circuit;
  const bridged = components.filter(({ condition }) => condition === 'bridged');
  if (bridged.length === 0) return circuit;
  const wires = new Map(
    bridged.map(({ id, from, to }): [string, Wire] => [id, { id: `${id} bridge`, kind: 'wire', from, to }]),
  );
  for (const { id } of components) if (id.endsWith(' bridge')) wires.delete(id.replace(' bridge', ''));
  if (wires.size === 0) return circuit;
  return { ...circuit, components: components.flatMap((each) => [each, wires.get(each.id) ?? []].flat()) };
}
