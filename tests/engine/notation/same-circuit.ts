import assert from 'node:assert/strict';
import type { Circuit } from '../../../src/engine/circuit/index.ts';

/** The circuit with its components by label and its nodes by first appearance, so that names and order do not matter. */
function canonical({ components, terminals, zero }: Circuit): Circuit {
  const names = new Map<string, string>();
  const name = (node: string): string => {
    const known = names.get(node) ?? `${names.size}`;
    names.set(node, known);
    return known;
  };
  const sorted = components.toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const renamed = sorted.map((component) => ({
    ...component,
    from: name(component.from),
    to: name(component.to),
  }));
  return {
    components: renamed,
    ...(terminals && { terminals: [name(terminals[0]), name(terminals[1])] }),
    ...(zero !== undefined && { zero: name(zero) }),
  };
}

/** Asserts that two circuits have the same ids, kinds, fields, orientations and joins; the names of nodes may differ. */
export function sameCircuit(found: Circuit, expected: Circuit, message: string): void {
  assert.deepEqual(canonical(found), canonical(expected), message);
}
