import { isSupply, resistanceOf, type Circuit, type Component } from '../circuit/index.ts';
import { electrical, leaves, type Single, type Tree } from '../topology/index.ts';
import { times, type Sign } from './relation.ts';

/** A part with a resistance, as a pupil sees it: what has none is left out, but keeps its current. */
export interface Part {
  /** What its quantities are called after: `R1`, or `(R2+R3)`. */
  readonly label: string;
  /** 1 where its quantities are counted along the tree. */
  readonly sign: Sign;
  readonly kind: 'supply' | 'source' | 'resistance' | 'series' | 'parallel';
  readonly parts: readonly Part[];
  /** Ids of the components in it. */
  readonly about: readonly string[];
  /** What stands in its path without resistance, each with its sign. */
  readonly joins: readonly { readonly id: string; readonly sign: Sign }[];
  readonly from: string;
  readonly to: string;
}

/** Whether a part is a supply, of an e.m.f. or of constant current. */
export const isDriver = ({ kind }: Part): boolean => kind === 'supply' || kind === 'source';

/** The sign of a part's current along the tree: a supply's counts from its negative to its positive end. */
export const flow = (part: Part): Sign => (isDriver(part) ? times(part.sign, -1) : part.sign);

/** A part and all that it is made of. */
export const every = (part: Part): readonly Part[] => [part, ...part.parts.flatMap(every)];

/** Whether there is a supply in it. */
export const drives = (part: Part): boolean => every(part).some(isDriver);

/** Whether a component only joins its ends. */
export const isJoin = (component: Component): boolean =>
  !isSupply(component) && resistanceOf(component)?.equals(0) === true;

/** Parts together as one. */
export function group(kind: 'series' | 'parallel', parts: readonly Part[]): Part {
  return {
    kind,
    parts,
    label: `(${parts.map(({ label }) => label).join(kind === 'series' ? '+' : '∥')})`,
    sign: 1,
    about: parts.flatMap(({ about }) => about),
    joins: [],
    from: parts[0]?.from ?? '',
    to: parts.at(kind === 'series' ? -1 : 0)?.to ?? '',
  };
}

/** The nodes of a circuit, those that have no resistance between them called the same. */
export function points({ components }: Circuit): (node: string) => string {
  const same = new Map<string, string>();
  const find = (node: string): string => {
    let last = node;
    for (let next = same.get(last); next !== undefined; next = same.get(last)) last = next;
    return last;
  };
  for (const { from, to } of components.filter(isJoin))
    if (find(from) !== find(to)) same.set(find(from), find(to));
  return find;
}

/** Of branches side by side the one without resistance, where there is one and nothing drives the others: it takes the whole current. */
export function freeBranch(
  tree: Tree,
  byId: ReadonlyMap<string, Component>,
): Exclude<Tree, { kind: 'parallel' }> | undefined {
  if (tree.kind !== 'parallel') return undefined;
  const componentsOf = (part: Tree): readonly Component[] =>
    leaves(part).flatMap(({ id }) => byId.get(id) ?? []);
  const [free, ...more] = tree.parts.filter((part) => componentsOf(part).every(isJoin));
  if (!free || free.kind === 'parallel' || more.length > 0) return undefined;
  return componentsOf(tree).some(isSupply) ? undefined : free;
}

const signOf = ({ reversed }: Single): Sign => (reversed ? -1 : 1);

/** The components of a chain; none of what stands side by side. */
const inLine = (tree: Tree): readonly Single[] =>
  tree.kind === 'component' ? [tree] : tree.kind === 'series' ? tree.parts.flatMap(inLine) : [];

/** Makes parts of trees; nothing of what has no resistance, nor of what stands beside such. */
export function partsOf(components: readonly Component[]): (tree: Tree) => Part | undefined {
  const byId = new Map(components.map((component) => [component.id, component]));
  return function of(tree): Part | undefined {
    const { from, to } = tree;
    if (tree.kind === 'component') {
      const component = byId.get(tree.id);
      if (!component || isJoin(component)) return undefined;
      const kind = isSupply(component) ? component.kind : 'resistance';
      return { label: tree.id, sign: signOf(tree), kind, parts: [], about: [tree.id], joins: [], from, to };
    }
    const parts = tree.parts.map(of);
    const some = parts.filter((part) => part !== undefined);
    const [only] = some;
    // Beside a branch without resistance no current flows: there is nothing to share.
    if (!only || (tree.kind === 'parallel' && some.length < parts.length)) return undefined;
    const joins = tree.parts
      .filter((_, index) => !parts[index])
      .flatMap((one) => inLine(freeBranch(one, byId) ?? one))
      .map((one) => ({ id: one.id, sign: signOf(one) }));
    const whole = some.length === 1 ? only : group(tree.kind, some);
    return { ...whole, joins: [...whole.joins, ...joins], from, to };
  };
}

/** The parts of a circuit that its trees show; a circuit that closes on itself gives the series round it. */
export function structure(circuit: Circuit): readonly Part[] {
  const { trees, live } = electrical(circuit);
  const of = partsOf(live);
  return trees.map(of).filter((part) => part !== undefined);
}
