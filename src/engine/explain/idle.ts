import { isSupply, resistanceOf, type Circuit, type Component } from '../circuit/index.ts';
import { electrical, leaves, type Tree } from '../topology/index.ts';
import { inPart } from './in-part.ts';
import { relation, type Relation } from './relation.ts';
import { freeBranch, isJoin, type Part } from './structure.ts';

/** A component through which no current flows, and what without resistance takes the current that it might have; nothing where no closed path leads through it. */
interface Idle {
  readonly component: Component;
  readonly past: readonly string[];
}

/** What carries nothing because a branch beside it takes the whole current: by id, with what is in that branch. */
function passed(
  tree: Tree,
  byId: ReadonlyMap<string, Component>,
): readonly (readonly [string, readonly string[]])[] {
  if (tree.kind === 'component') return [];
  const free = freeBranch(tree, byId);
  if (!free) return tree.parts.flatMap((part) => passed(part, byId));
  const past = leaves(free).map(({ id }) => id);
  const others = tree.parts.filter((part) => part !== free).flatMap((part) => leaves(part));
  return others.map(({ id }) => [id, past] as const);
}

/** What carries nothing in a circuit that some supply drives. */
function idleIn(circuit: Circuit): readonly Idle[] {
  if (circuit.terminals || !circuit.components.some(isSupply)) return [];
  const { live, trees } = electrical(circuit);
  const byId = new Map(live.map((component) => [component.id, component]));
  const past = new Map(trees.flatMap((tree) => passed(tree, byId)));
  return circuit.components.flatMap((component): readonly Idle[] => {
    const { id, kind } = component;
    const beside = past.get(id);
    if (beside) return [{ component, past: beside }];
    const isLive = byId.has(id) || kind === 'source' || kind === 'voltmeter';
    return isLive ? [] : [{ component, past: [] }];
  });
}

/** A component as a part that stands by itself. */
const alone = ({ id, from, to, kind }: Component): Part => ({
  label: id,
  sign: 1,
  kind: kind === 'supply' ? 'supply' : 'resistance',
  parts: [],
  about: [id],
  joins: [],
  from,
  to,
});

/** Where no current flows: that it does not, what then holds there, and the parts with resistance. */
export function whereNoneFlows(
  circuit: Circuit,
  isReal: (id: string) => boolean,
): { readonly parts: readonly Part[]; readonly relations: readonly Relation[] } {
  const idle = idleIn(circuit);
  const parts = idle
    .filter(({ component }) => resistanceOf(component) !== undefined && !isJoin(component))
    .map(({ component }) => alone(component));
  const none = idle.map(({ component: { id }, past }) =>
    relation(past.length > 0 ? 'passed by' : 'no closed path', 'sum', [id, ...past], `I_${id}`),
  );
  return {
    parts,
    relations: [...none, ...parts.flatMap((part) => inPart(part, isReal(part.label), undefined))],
  };
}
