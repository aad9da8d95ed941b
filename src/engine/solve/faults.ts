import { exactFlow } from './exact.ts';
import { goRound } from './forest.ts';
import type { Branch, Graph } from './graph.ts';
import type { Fault } from './solution.ts';

/** The ids of the components of branches, in the circuit's order. */
export function idsOf(branches: readonly Branch[]): string[] {
  return [...branches].sort((a, b) => a.place - b.place).map(({ component }) => component.id);
}

/** A branch as part of a loop; `along` where the loop runs from its tail to its head. */
interface Step {
  readonly branch: Branch;
  readonly along: boolean;
}

/** The loop that a chord closes, in order. */
export function loopOf(chord: Branch): Step[] {
  const onwards: Step[] = [];
  const back: Step[] = [];
  goRound(chord, (branch, along, isOnwards) => (isOnwards ? onwards : back).push({ branch, along }));
  return [...onwards, ...back.reverse()];
}

/** The steps of a loop that have an e.m.f. */
const driving = (loop: readonly Step[]): Step[] => loop.filter(({ branch }) => branch.volts);

/**
 * The supplies that a loop short-circuits: nothing in it has resistance but inside of supplies, and all e.m.f.s, one at least, drive the
 * same way round. None if it is no short circuit.
 */
export function shorted(loop: readonly Step[]): Branch[] {
  const steps = driving(loop);
  const ways = new Set(steps.map(({ branch, along }) => branch.volts > 0n === along));
  const limits = loop.some(({ branch }) => branch.ohms && branch.component.kind !== 'supply');
  return ways.size > 1 || limits ? [] : steps.map(({ branch }) => branch);
}

/** Loops that share a branch become one list of branches. */
function merge(loops: readonly (readonly Branch[])[]): Branch[][] {
  const groups: Branch[][] = [];
  for (const loop of loops) {
    const group = groups.find((own) => loop.some((branch) => own.includes(branch)));
    if (group) group.push(...loop.filter((branch) => !group.includes(branch)));
    else groups.push([...loop]);
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
  const faults = loops.flatMap((loop): Fault[] => {
    const emf = loop.reduce(
      (sum, { branch, along }) => (along ? sum + branch.volts : sum - branch.volts),
      0n,
    );
    if (!emf) return [];
    const branches = loop.map(({ branch }) => branch);
    const ids = idsOf(branches);
    const short = shorted(loop);
    const supplies = idsOf(driving(loop).map(({ branch }) => branch));
    if (short.length === 0) return [{ code: 'supplies in contradiction', data: { supplies }, ids }];
    const path = branches.filter((branch) => !short.includes(branch)).map(({ component }) => component.id);
    return [{ code: 'short circuit', data: { supplies, path }, ids }];
  });
  if (faults.length > 0) return faults;
  const flow = exactFlow(graph, (current) => current !== 0n);
  const shared = loops
    .map((loop) => loop.map(({ branch }) => branch))
    .filter((loop) => loop.some((branch) => flow.current(branch)));
  return merge(shared).map((branches) => {
    const ids = idsOf(branches);
    return { code: 'share undetermined', data: { ids }, ids };
  });
}
