import type { Component } from '../circuit/index.ts';
import { leaves, type Tree } from '../topology/index.ts';
import { parallel, total } from './arithmetic.ts';
import type { Term } from './rule-check.ts';
import { isJoin, term, type Terms } from './terms.ts';

/** A part of a tree with its quantities, put as a pupil would, in quantities of components. Directions are the tree's. */
export interface Block {
  readonly tree: Tree;
  readonly parts: readonly Block[];
  /** The component, where it is a single one. */
  readonly component: Component | undefined;
  /** `R1∥(R2+L1)`; first and last component, `R1…R9`, where there are more than five. */
  readonly label: string;
  readonly ends: readonly [first: string, last: string, count: number];
  /** The ids of the supplies in it. */
  readonly supplies: readonly string[];
  /** What adds up to the current through it. */
  readonly current: readonly Term[];
  /** What adds up to the p.d. across it: nothing where it joins without resistance. */
  readonly voltage: readonly Term[];
  /** Its resistance, told by those of its components; meaningless where there is a supply in it. */
  readonly resistance: Term;
}

/** Which part tells the current of a series best: an ammeter, any component, a wire or switch, a block. */
function rank({ component }: Block): number {
  if (!component) return 3;
  return component.kind === 'ammeter' ? 0 : isJoin(component) ? 2 : 1;
}

/** The part with the lowest figure, the first of them. */
function least(parts: readonly Block[], figure: (part: Block) => number): Block | undefined {
  return parts.toSorted((a, b) => figure(a) - figure(b))[0];
}

/** The branch that tells the p.d. of a parallel block best: the one with the fewest terms. */
export const plainest = (branches: readonly Block[]): Block | undefined =>
  least(branches, ({ voltage }) => voltage.length);

/** The part that tells the current of a series best. */
export const telling = (parts: readonly Block[]): Block | undefined => least(parts, rank);

/** Whether it has its share in the resistance of a series. */
export const resists = ({ voltage, supplies }: Block): boolean => voltage.length > 0 && supplies.length === 0;

function single(component: Component, reversed: boolean, tree: Tree, terms: Terms): Block {
  const { id, kind } = component;
  return {
    tree,
    parts: [],
    component,
    label: id,
    ends: [id, id, 1],
    supplies: kind === 'supply' ? [id] : [],
    current: terms.current(component, reversed),
    voltage: terms.voltage(component, reversed),
    resistance: terms.resistance(component),
  };
}

function group(tree: Tree, parts: readonly Block[]): Block {
  const isSeries = tree.kind === 'series';
  const sign = isSeries ? '+' : '∥';
  const [first = '', last = ''] = [parts[0]?.ends[0], parts.at(-1)?.ends[1]];
  const count = parts.reduce((sum, part) => sum + part.ends[2], 0);
  const named = (labels: readonly string[]): string => (count > 5 ? `${first}…${last}` : labels.join(sign));
  const resistances = (isSeries ? parts.filter(resists) : parts).map(({ resistance }) => resistance);
  const [only, ...others] = resistances;
  return {
    tree,
    parts,
    component: undefined,
    label: named(parts.map(({ label, component }) => (component ? label : `(${label})`))),
    ends: [first, last, count],
    supplies: parts.flatMap(({ supplies }) => supplies),
    current: isSeries ? (telling(parts)?.current ?? []) : parts.flatMap(({ current }) => current),
    voltage: isSeries ? parts.flatMap(({ voltage }) => voltage) : (plainest(parts)?.voltage ?? []),
    resistance:
      only && others.length === 0
        ? only
        : term(
            `R_(${named(resistances.map(({ name }) => name.slice(2)))})`,
            isSeries ? total(resistances) : parallel(resistances),
            resistances.some(({ hidden }) => hidden),
          ),
  };
}

/** Every block of some trees, each before its parts, and the blocks that the others are parts of. Any depth will do. */
export function blocksOf(
  trees: readonly Tree[],
  components: ReadonlyMap<string, Component>,
  terms: Terms,
): { readonly blocks: readonly Block[]; readonly around: ReadonlyMap<Block, Block> } {
  const order: Tree[] = [];
  const pending = trees.toReversed();
  for (let tree = pending.pop(); tree; tree = pending.pop()) {
    order.push(tree);
    if (tree.kind !== 'component') for (const part of tree.parts.toReversed()) pending.push(part);
  }
  const built = new Map<Tree, Block>();
  const around = new Map<Block, Block>();
  for (const tree of order.toReversed()) {
    if (tree.kind === 'component') {
      const component = components.get(tree.id);
      if (component) built.set(tree, single(component, tree.reversed, tree, terms));
    } else {
      const block = group(
        tree,
        tree.parts.flatMap((part) => built.get(part) ?? []),
      );
      for (const part of block.parts) around.set(part, block);
      built.set(tree, block);
    }
  }
  return { blocks: order.flatMap((tree) => built.get(tree) ?? []), around };
}

/** The ids of all components of some blocks. */
export const idsOf = (blocks: readonly Block[]): readonly string[] =>
  blocks.flatMap(({ tree }) => leaves(tree).map(({ id }) => id));

/** The labels of some blocks. */
export const labelsOf = (blocks: readonly Block[]): readonly string[] => blocks.map(({ label }) => label);
