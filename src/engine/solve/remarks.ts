import { isSupply, type Circuit } from '../circuit/index.ts';
import { isBreak } from './breaks.ts';
import { across } from './forest.ts';
import type { Graph } from './graph.ts';
import { idsOf } from './ids-of.ts';
import { isClosed, onLoops } from './sent.ts';
import type { Remark } from './solution.ts';

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
    isBreak(part) && (isSupply(part) || isBetween(place)) ? [part.id] : [],
  );
}

/** What has been done to the components. */
export function conditionsOf({ components }: Circuit): Remark[] {
  return (['broken', 'bridged'] as const).flatMap((code) => {
    const ids = components.filter(({ condition }) => condition === code).map(({ id }) => id);
    return ids.length > 0 ? [{ code, data: { ids }, ids }] : [];
  });
}

function isOpen(graph: Graph): boolean {
  const looped = onLoops(graph);
  return graph.supplies.every((supply) => !looped[supply]);
}

/** Whether a branch conducts in no piece with a supply. */
function cutOff(graph: Graph): (branch: number) => boolean {
  const { ohms, tails, roots, supplies } = graph;
  const pieceOf = (branch: number): number | undefined => roots[tails[branch] ?? 0];
  const conducts = (branch: number): boolean => ohms[branch] !== Infinity;
  const drives = (branch: number): boolean => conducts(branch) || isClosed(graph, branch);
  const driven = supplies.filter(drives).map(pieceOf);
  return (branch) => conducts(branch) && !driven.includes(pieceOf(branch));
}

/**
 * What is worth knowing of a circuit that has an answer; where something is secretly wrong with it, of what is named only that which
 * is so in the circuit `drawn` as well.
 */
export function remarksOf(graph: Graph, drawn: Graph): Remark[] {
  if (isOpen(graph)) {
    const ids = isOpen(drawn) ? breaks(drawn) : [];
    return [{ code: 'open loop', data: { at: ids }, ids }];
  }
  const [isCut, isSeenCut] = [cutOff(graph), cutOff(drawn)];
  const ids = idsOf(
    graph,
    [...graph.components.keys()].filter((branch) => isCut(branch) && isSeenCut(branch)),
  );
  return ids.length > 0 ? [{ code: 'cut off', data: { ids }, ids }] : [];
}
