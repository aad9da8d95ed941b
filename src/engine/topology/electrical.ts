import {
  bridges as bridged,
  faultIn,
  isSupply,
  resistanceOf,
  type Circuit,
  type Component,
} from '../circuit/index.ts';
import { blocks } from './blocks.ts';
import type { Edge } from './edge.ts';
import { core } from './core.ts';
import { closing, treeOf } from './tree-of.ts';
import type { Tree } from './tree.ts';

/** What a steady current can flow in. */
export interface Electrical {
  /** The components on some closed path with a supply (or between the terminals), in the circuit's order, bridges among them. */
  readonly live: readonly Component[];
  /**
   * The trees they form: one, closed as in `seriesParallel`, for each part that its supplies drive apart from the others. A
   * part with a bridge gives its series and parallel parts instead.
   */
  readonly trees: readonly Tree[];
  /** The components of the bridges. */
  readonly bridge: readonly string[];
}

/**
 * The circuit as its currents see it: without ideal voltmeters, open switches, what is taken out, and what hangs on one node
 * only; as it is drawn, but for what secretly conducts. What has no resistance (wires, closed switches, ideal ammeters) stays, and so do the wires across what is bridged.
 */
export function electrical(circuit: Circuit): Electrical {
  const conducting = bridged(circuit).components.filter(
    (component) =>
      resistanceOf(component) !== undefined ||
      faultIn(component) === 'bridged' ||
      (component.kind === 'source' && component.condition !== 'broken'),
  );
  const way = closing(circuit);
  const closers = new Set<Edge>(conducting.filter(isSupply));
  if (way) closers.add(way);
  const live = new Set<Edge>();
  const trees: Tree[] = [];
  const bridges = new Set<string>();
  for (const { edges } of blocks<Edge>(way?.id === '' ? [way, ...conducting] : conducting)) {
    const cut = edges.find((edge) => closers.has(edge));
    if (!cut || edges.length < 2) continue;
    for (const edge of edges) live.add(edge);
    const tree = treeOf(cut, edges);
    const left = tree ? { parts: [tree], bridge: [] } : core(cut, edges);
    trees.push(...left.parts);
    for (const id of left.bridge) bridges.add(id);
  }
  return {
    live: conducting.filter((component) => live.has(component)),
    trees,
    bridge: conducting.map(({ id }) => id).filter((id) => bridges.has(id)),
  };
}
