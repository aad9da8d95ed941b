import { isSupply, type Circuit, type Component } from '../../circuit/index.ts';
import { leaves, seriesParallel, type Irreducible, type Tree } from '../../topology/index.ts';

/** A circuit as a chain with brackets, and the components that are placed beside it. */
export interface Plan {
  readonly tree: Tree;
  readonly placed: readonly Component[];
}

/** Larger circuits that are not series and parallel are written as placed components: no one reads them as a chain. */
const searchLimit = 60;

function standing(circuit: Circuit, components: readonly Component[]): Tree | Irreducible {
  const [only] = components;
  if (components.length === 1 && only && isSupply(only) && only.from !== only.to) {
    return { kind: 'component', id: only.id, reversed: true, from: only.to, to: only.from };
  }
  return seriesParallel({ ...circuit, components });
}

/** Whether every node of what is placed is in the chain or is named once more. */
function sound(tree: Tree, placed: readonly Component[]): boolean {
  const chained = new Set(leaves(tree).flatMap(({ from, to }) => [from, to]));
  const ends = placed.flatMap(({ from, to }) => [from, to]).filter((node) => !chained.has(node));
  return ends.every((node) => ends.indexOf(node) !== ends.lastIndexOf(node));
}

/** Leaves out what keeps the rest from being a chain with brackets, the latest components first. */
function search(circuit: Circuit, first: readonly Component[]): Plan | undefined {
  const out = new Set(first);
  const without = (more?: Component): readonly Component[] =>
    circuit.components.filter((component) => !out.has(component) && component !== more);
  for (;;) {
    const rest = without();
    const tree = standing(circuit, rest);
    const placed = circuit.components.filter((component) => out.has(component));
    if (tree.kind !== 'irreducible') return sound(tree, placed) ? { tree, placed } : undefined;
    const stuck = rest.filter(({ id }) => tree.ids.includes(id)).reverse();
    const [latest] = stuck;
    if (!latest || rest.length > searchLimit) return undefined;
    if (tree.reason === 'bridge') {
      out.add(
        stuck.find((component) => standing(circuit, without(component)).kind !== 'irreducible') ?? latest,
      );
    } else for (const component of stuck) out.add(component);
  }
}

/** How a circuit is written as a chain: voltmeters beside it where that can be; undefined where all must be placed. */
export function plan(circuit: Circuit): Plan | undefined {
  const { components } = circuit;
  const meters = components.filter(({ kind }) => kind === 'voltmeter');
  const others = components.filter(({ kind }) => kind !== 'voltmeter');
  const [beside, whole] = [standing(circuit, others), standing(circuit, components)];
  if (beside.kind !== 'irreducible' && sound(beside, meters)) return { tree: beside, placed: meters };
  if (whole.kind !== 'irreducible') return { tree: whole, placed: [] };
  return search(circuit, meters) ?? search(circuit, []);
}
