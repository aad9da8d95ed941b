import { exactFlow } from './exact.ts';
import type { Branch, Graph } from './graph.ts';
import { idsOf, isShortCircuit, loopOf, type Loop } from './loop.ts';
import type { Fault } from './solution.ts';

/** Loops that share a branch become one list of branches. */
function merge(loops: readonly Loop[]): Branch[][] {
  const groups: Branch[][] = [];
  for (const { branches } of loops) {
    const group = groups.find((own) => branches.some((branch) => own.includes(branch)));
    if (group) group.push(...branches.filter((branch) => !group.includes(branch)));
    else groups.push([...branches]);
  }
  return groups;
}

/**
 * Why the loops without resistance leave the circuit without an answer. With an e.m.f. round one, nothing limits its current. With
 * none, any current may circulate: how a current that enters is shared out is not determined, but where none enters, none flows,
 * since that is so for whatever small resistances the real branches have.
 */
export function faultsOf(graph: Graph): Fault[] {
  if (graph.slack.length === 0) return [];
  const loops = graph.slack.map(loopOf);
  const driven = loops.filter(({ emfs }) => emfs.reduce((sum, emf) => sum + emf, 0n) !== 0n);
  if (driven.length > 0) {
    return driven.map((loop): Fault => {
      const { branches, supplies } = loop;
      const ids = idsOf(branches);
      if (!isShortCircuit(loop)) return { code: 'supplies in contradiction', data: { supplies }, ids };
      const path = branches.map(({ component }) => component.id).filter((id) => !supplies.includes(id));
      return { code: 'short circuit', data: { supplies, path }, ids };
    });
  }
  const flow = exactFlow(graph, (current) => current !== 0n);
  const shared = loops.filter(({ branches }) => branches.some((branch) => flow.current(branch)));
  return merge(shared).map((branches) => {
    const ids = idsOf(branches);
    return { code: 'share undetermined', data: { ids }, ids };
  });
}
