import { Fraction } from '../quantity/index.ts';
import { constantCurrentFaults } from './constant-currents.ts';
import { exactFlow, mostExact } from './exact.ts';
import { goRound } from './forest.ts';
import { isAside, type Graph } from './graph.ts';
import { idsOf } from './ids-of.ts';
import { liveFlow } from './live.ts';
import type { Fault } from './solution.ts';

/** A branch as part of a loop; `along` where the loop runs from its tail to its head. */
interface Step {
  readonly branch: number;
  readonly along: boolean;
}

/** The loop that a chord closes, in order. */
export function loopOf(graph: Graph, chord: number): Step[] {
  const onwards: Step[] = [];
  const back: Step[] = [];
  goRound(graph, chord, (branch, along, isOnwards) => (isOnwards ? onwards : back).push({ branch, along }));
  return [...onwards, ...back.reverse()];
}

/** The resistance of a branch that is not inside of a supply, in ohms. */
export const ohmsOutside = ({ components, ohms, ohm }: Graph, branch: number): number =>
  components[branch]?.kind === 'supply' ? 0 : (ohms[branch] ?? 0) / (ohm || 1);

/**
 * The supplies that a loop short-circuits: nothing in it has resistance (or it all together no more than so many ohms) but inside of
 * supplies, and all e.m.f.s, one at least, drive the same way round. None if it is no short circuit.
 */
export function shorted(graph: Graph, loop: readonly Step[], ohms = 0): number[] {
  const { emfs } = graph;
  const steps = loop.filter(({ branch }) => emfs[branch]?.n);
  const ways = new Set(steps.map(({ branch, along }) => (emfs[branch]?.s ?? 0n) > 0n === along));
  const outside = loop.reduce((sum, { branch }) => sum + ohmsOutside(graph, branch), 0);
  return ways.size > 1 || outside > ohms ? [] : steps.map(({ branch }) => branch);
}

/** The e.m.f. round a loop. */
function emfOf({ emfs }: Graph, loop: readonly Step[]): Fraction {
  return loop.reduce((sum, { branch, along }) => {
    const emf = emfs[branch] ?? 0;
    return along ? sum.add(emf) : sum.sub(emf);
  }, new Fraction(0));
}

/** Loops that share a branch become one list of branches. */
function merge(loops: readonly (readonly number[])[]): number[][] {
  const groups: number[][] = [];
  for (const loop of loops) {
    const group = groups.find((own) => loop.some((branch) => own.includes(branch)));
    if (group) group.push(...loop.filter((branch) => !group.includes(branch)));
    else groups.push([...loop]);
  }
  return groups;
}

/** So small a share of the largest current is none, where currents are not known exactly. */
const none = 1e-9;

/** Whether a current flows in a branch, as far as it is determined: exactly, where the circuit is not too large for that. */
function flowsIn(graph: Graph): (branch: number) => boolean {
  if (graph.chords.length <= mostExact) {
    const flow = exactFlow(graph, Boolean);
    return (branch) => flow.current(branch);
  }
  const flow = liveFlow(graph);
  const sizes = graph.tails.map((_, branch) => Math.abs(flow.current(branch)));
  const largest = sizes.reduce((most, size) => Math.max(most, size), 0);
  return (branch) => (sizes[branch] ?? 0) > none * largest;
}

/**
 * Why the loops without resistance leave the circuit without an answer. With an e.m.f. round one, nothing limits its current. With
 * none, any current may circulate: how a current that enters is shared out is not determined, but where none enters, none flows,
 * since that is so for whatever small resistances the real branches have; and none in the last bit of a potentiometer's track, which is the
 * longer, however short. And why constant currents have no single answer.
 */
export function faultsOf(graph: Graph): Fault[] {
  const { slack, emfs, components } = graph;
  const apart = graph.sent ? constantCurrentFaults(graph) : [];
  if (slack.length === 0) return apart;
  const loops = slack.map((chord) => loopOf(graph, chord));
  const faults = loops.flatMap((loop): Fault[] => {
    if (!emfOf(graph, loop).n) return [];
    const branches = loop.map(({ branch }) => branch);
    const ids = idsOf(graph, branches);
    const short = shorted(graph, loop);
    const supplies = idsOf(
      graph,
      branches.filter((branch) => emfs[branch]?.n),
    );
    if (short.length === 0) return [{ code: 'supplies in contradiction', data: { supplies }, ids }];
    const path = branches
      .filter((branch) => !emfs[branch]?.n)
      .map((branch) => graph.components[branch]?.id ?? '');
    return [{ code: 'short circuit', data: { supplies, path }, ids }];
  });
  if (faults.length + apart.length > 0) return [...faults, ...apart];
  const flows = flowsIn(graph);
  const shared = loops
    .map((loop) => loop.map(({ branch }) => branch))
    .filter(([chord = -1, ...others]) => !isAside(components[chord]) && [chord, ...others].some(flows));
  return merge(shared).map((branches) => {
    const ids = idsOf(graph, branches);
    return { code: 'share undetermined', data: { ids }, ids };
  });
}
