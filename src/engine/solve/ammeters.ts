import { loopOf, shorted } from './faults.ts';
import { goRound, grow, top } from './forest.ts';
import type { Graph } from './graph.ts';
import { idsOf } from './ids-of.ts';
import { joins, runsOf, type Runs } from './meter-runs.ts';
import type { Caution, Remark } from './solution.ts';

/** An ammeter takes the current of what has so many times its resistance; one beside less is a galvanometer with its shunt (common practice). */
const many = 10;

/** Ammeters straight across supplies: between their ends there are only supplies that drive the same way round, and what has no resistance. */
function acrossSupplies(graph: Graph, { meters, ends }: Runs): Caution[] {
  const ranks = graph.components.map(({ kind }, branch) => {
    if (kind === 'supply') return (graph.ohms[branch] ?? 0) + 1;
    return meters.has(branch) || !joins(graph, branch) ? Infinity : 0;
  });
  const joined = { ...graph, ...ends, ...grow(ends, ranks, 0) };
  return [...meters].flatMap(([run, own]): Caution[] => {
    const [tail, head] = [ends.tails[run] ?? 0, ends.heads[run] ?? 0];
    if (joined.roots[tail] !== joined.roots[head]) return [];
    const [, ...rest] = loopOf(joined, run);
    const [ids, supplies] = [idsOf(graph, own), idsOf(graph, shorted(joined, rest))];
    if (supplies.length === 0) return [];
    return [{ code: 'ammeter across a supply', data: { meters: ids, supplies }, ids: [...ids, ...supplies] }];
  });
}

/** A loop: what it leads through, and through which ammeters that are in series with none of that. */
interface Loop {
  readonly parts: readonly number[];
  readonly runs: readonly number[];
}

/** The loops of a circuit, those together that share a part: where no supply is in them, nothing flows but through such ammeters. */
function loopsOf(graph: Graph, { meters, ends, isBeside }: Runs): Loop[][] {
  const { components, ohms, amperes } = graph;
  const ranks = components.map(({ kind }, branch) => {
    if (meters.has(branch) && isBeside(branch)) return 1;
    if (joins(graph, branch)) return 0;
    return kind !== 'voltmeter' && (amperes[branch] || ohms[branch] !== Infinity) ? 2 : Infinity;
  });
  const joined = { ...ends, ...grow(ends, ranks, 0) };
  const firsts = [...components.keys()];
  const loops = joined.chords.flatMap((chord): Loop[] => {
    if (ranks[chord] !== 2) return [];
    const [parts, runs]: [number[], number[]] = [[], []];
    goRound(joined, chord, (branch) => {
      if (ranks[branch] === 2) parts.push(branch);
      if (ranks[branch] === 1) runs.push(branch);
    });
    for (const part of parts) firsts[top(firsts, part)] = top(firsts, chord);
    return [{ parts, runs }];
  });
  const together: Loop[][] = components.map(() => []);
  for (const loop of loops) together[top(firsts, loop.parts[0] ?? 0)]?.push(loop);
  return together.filter(({ length }) => length > 0);
}

/** Ammeters across what is no supply: they take the current that is to go through it. What is `said` of supplies is enough. */
function acrossOthers(graph: Graph, runs: Runs, said: ReadonlySet<string>): Remark[] {
  const { components, ohms, supplies, tails, roots } = graph;
  if (![...runs.meters.keys()].some(runs.isBeside)) return [];
  const driven = new Set(supplies.map((supply) => roots[tails[supply] ?? 0]));
  const ohmsOf = (branches: readonly number[]): number =>
    branches.reduce((sum, branch) => sum + (ohms[branch] ?? 0), 0);
  const metersOf = (some: readonly number[]): number[] => some.flatMap((run) => runs.meters.get(run) ?? []);
  const found = new Map<string, [meters: number[], parts: number[]]>();
  for (const loops of loopsOf(graph, runs)) {
    const parts = loops.flatMap((loop) => loop.parts);
    const meters = [...new Set(loops.flatMap((loop) => metersOf(loop.runs)))];
    const isDriven = driven.has(roots[tails[parts[0] ?? 0] ?? 0]);
    const isFed = parts.some((part) => supplies.includes(part));
    const isPassed = loops.every((loop) => ohmsOf(loop.parts) >= many * ohmsOf(metersOf(loop.runs)));
    if (meters.length === 0 || isFed || !isDriven || !isPassed) continue;
    const key = meters.toSorted().join();
    const [, before] = found.get(key) ?? [meters, []];
    found.set(key, [meters, [...before, ...parts.filter((part) => components[part]?.kind !== 'ammeter')]]);
  }
  return [...found.values()].flatMap(([meters, parts]): Remark[] => {
    const [own, others] = [idsOf(graph, meters), idsOf(graph, parts)];
    if (others.length === 0 || own.every((id) => said.has(id))) return [];
    const data = { meters: own, others, ideal: ohmsOf(meters) === 0 };
    return [{ code: 'ammeter across', data, ids: [...own, ...others] }];
  });
}

/** Ammeters that lie across something instead of in series with it. */
export interface AmmetersAcross {
  readonly supplies: readonly Caution[];
  readonly others: readonly Remark[];
}

/** Finds them. */
export function ammetersAcross(graph: Graph): AmmetersAcross {
  const runs = runsOf(graph);
  if (runs.meters.size === 0) return { supplies: [], others: [] };
  const supplies = acrossSupplies(graph, runs);
  return { supplies, others: acrossOthers(graph, runs, new Set(supplies.flatMap(({ ids }) => ids))) };
}
