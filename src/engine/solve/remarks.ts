import { isSwitch, type Circuit, type Component } from '../circuit/index.ts';
import { idsOf } from './faults.ts';
import { across } from './forest.ts';
import type { Graph } from './graph.ts';
import type { Remark } from './solution.ts';

/** Whether it would conduct if it were closed and mended. */
const isBreak = (part: Component): boolean =>
  isSwitch(part) ||
  part.kind === 'fuse' ||
  (part.condition === 'broken' && (part.kind !== 'voltmeter' || !!part.resistance));

/**
 * The open switches and broken components between parts that nothing but supplies join, and broken supplies: with one of them on every
 * path, closing and mending them may close one.
 */
function breaks(graph: Graph): string[] {
  const { components, order, up, tails, heads } = graph;
  const parts: number[] = [];
  for (const node of order) {
    const branch = up[node] ?? -1;
    const isJoined = branch >= 0 && components[branch]?.kind !== 'supply';
    parts[node] = isJoined ? (parts[across(graph, branch, node)] ?? 0) : node;
  }
  const isBetween = (place: number): boolean => parts[tails[place] ?? 0] !== parts[heads[place] ?? 0];
  return components.flatMap((part, place) =>
    isBreak(part) && (part.kind === 'supply' || isBetween(place)) ? [part.id] : [],
  );
}

/** What has been done to the components. */
export function conditionsOf({ components }: Circuit): Remark[] {
  return (['broken', 'bridged'] as const).flatMap((code) => {
    const ids = components.filter(({ condition }) => condition === code).map(({ id }) => id);
    return ids.length > 0 ? [{ code, data: { ids }, ids }] : [];
  });
}

/** What is worth knowing of a circuit that has an answer. */
export function remarksOf(graph: Graph): Remark[] {
  const { components, ohms, tails, roots, loops, supplies } = graph;
  if (supplies.every((supply) => loops[supply]?.length === 0)) {
    const ids = breaks(graph);
    return [{ code: 'open loop', data: { at: ids }, ids }];
  }
  const pieceOf = (branch: number): number | undefined => roots[tails[branch] ?? 0];
  const conducts = (branch: number): boolean => ohms[branch] !== Infinity;
  const driven = supplies.filter(conducts).map(pieceOf);
  const isCut = (branch: number): boolean => conducts(branch) && !driven.includes(pieceOf(branch));
  const ids = idsOf(graph, [...components.keys()].filter(isCut));
  return ids.length > 0 ? [{ code: 'cut off', data: { ids }, ids }] : [];
}
