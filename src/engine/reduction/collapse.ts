import { isSupply, resistanceOf, type Circuit, type Component, type Resistor } from '../circuit/index.ts';
import { leaves, seriesParallel, type Tree } from '../topology/index.ts';

/** A stretch of a circuit between two nodes. */
interface Run {
  readonly from: string;
  readonly to: string;
  readonly ids: readonly string[];
}

/** The smallest stretch that holds all of some components: branches side by side, or parts one after another with what stands between. */
function runOf(tree: Tree, isMeant: (id: string) => boolean): Run {
  const { from, to } = tree;
  if (tree.kind === 'component') return { from, to, ids: [tree.id] };
  const held = tree.parts.filter((part) => leaves(part).some(({ id }) => isMeant(id)));
  const [first] = held;
  const last = held.at(-1);
  if (!first || !last) return { from, to, ids: [] };
  if (held.length === 1) return runOf(first, isMeant);
  const { parts } = tree;
  const run = tree.kind === 'parallel' ? held : parts.slice(parts.indexOf(first), parts.indexOf(last) + 1);
  const ids = run.flatMap((part) => leaves(part).map(({ id }) => id));
  return { ids, ...(tree.kind === 'parallel' ? { from, to } : { from: first.from, to: last.to }) };
}

/**
 * The circuit with one resistor in the place of some components, and of what has no resistance between them; undefined where they
 * are no stretch of their own.
 */
export function collapse(
  circuit: Circuit,
  ids: readonly string[],
  block: Pick<Resistor, 'id' | 'resistance'>,
): Circuit | undefined {
  const tree = seriesParallel(circuit);
  if (tree.kind === 'irreducible') return undefined;
  const run = runOf(tree, (id) => ids.includes(id));
  const joins = (one: Component): boolean => !isSupply(one) && resistanceOf(one)?.equals(0) === true;
  const inside = circuit.components.filter(({ id }) => run.ids.includes(id));
  if (inside.some((one) => !ids.includes(one.id) && !joins(one))) return undefined;
  const [first] = inside;
  const resistor: Resistor = { kind: 'resistor', ...block, from: run.from, to: run.to };
  const components = circuit.components.flatMap((one) =>
    one === first ? [resistor] : inside.includes(one) ? [] : [one],
  );
  return { ...circuit, components };
}
