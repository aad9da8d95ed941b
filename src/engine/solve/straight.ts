import { bridges, type Circuit, type Component } from '../circuit/index.ts';
import { faultsOf } from './faults.ts';
import { forestOf, graphOf } from './graph.ts';
import { liveFlow } from './live.ts';
import { sentThrough } from './sent.ts';
import type { Fault } from './solution.ts';

/** A straight line in the place of a curve: p.d. = current × ohms − volts; and what flows beside it whatever the p.d. */
export interface StraightLine {
  readonly ohms: number;
  readonly volts: number;
  readonly amperes?: number;
}

/** A circuit in which straight lines stand for the curves of some components. */
export interface Straightened {
  /** The components, the wires that bridge some among them; each is told below by its place. */
  readonly components: readonly Component[];
  readonly faults: readonly Fault[];
  /** The line of each component: of a supply its e.m.f. and what is inside it or its constant current, Infinity ohms where nothing conducts. */
  readonly lines: readonly StraightLine[];
  /** The p.d. across each component along its current (inside a supply from its negative terminal), with other lines for some places. */
  drops(others: ReadonlyMap<number, StraightLine>): Float64Array;
}

const numbers = {
  zero: 0,
  sum: (a: number, b: number): number => a + b,
  negative: (a: number): number => -a,
};

/** Takes a circuit as one of straight lines. */
export function straightened(circuit: Circuit): Straightened {
  const graph = graphOf(bridges(circuit));
  const { tails, heads, roots, components, resistances, emfs, amperes } = graph;
  const given = amperes.map((current) => current && Number(current));
  const lines = components.map((_, place) => ({
    ohms: Number(resistances[place] ?? Infinity),
    volts: Number(emfs[place] ?? 0),
    ...(given[place] && { amperes: given[place] }),
  }));
  return {
    components,
    faults: faultsOf(graph),
    lines,
    drops(others) {
      const now = lines.map((line, place) => others.get(place) ?? line);
      const ohms = now.map((line) => line.ohms);
      // What a steep or a flat tangent has in ohms is far from what its curve was taken to have: the least are to be in the forest.
      const forest = { ...graph, ...forestOf(graph, ohms, graph) };
      const sent = graph.sent && sentThrough(forest, given, numbers);
      const flow = liveFlow({
        ...forest,
        sent: undefined,
        ohms,
        volts: now.map(
          (line, place) => line.volts - (line.ohms < Infinity ? line.ohms * (sent?.[place] ?? 0) : 0),
        ),
        ohm: NaN,
        volt: NaN,
      });
      return Float64Array.from(components, (_, place) => {
        const [tail = 0, head = 0] = [tails[place], heads[place]];
        return roots[tail] === roots[head] ? flow.between(tail, head) : 0;
      });
    },
  };
}
