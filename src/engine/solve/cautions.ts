import { isTrack, twinOf, type Circuit, type Component } from '../circuit/index.ts';
import { writeReading, type Fraction } from '../quantity/index.ts';
import { limits, loopOf, shorted } from './faults.ts';
import type { Graph } from './graph.ts';
import { idsOf } from './ids-of.ts';
import { round } from './round.ts';
import type { Caution, Readings } from './solution.ts';

/** Volts d.c. up to which parts that may be touched count as extra-low voltage (IEC 60335-1, as taken over by IEC 62282-5-1:2012, 3.23). */
const extraLow = 60;
/** How much of its rated power a lamp may take before it is worth a word (common practice). */
const lampMargin = 1.2;
/** Keeps what takes just its rating from being over it by a rounding. */
const rounding = 1 + 1e-9;

const number = (x: number | Fraction): number => (typeof x === 'number' ? x : round(x.s * x.n, x.d));

/** The power that a component is made for; undefined if that is not known. */
function ratingOf(component: Component): Fraction | undefined {
  if (component.kind !== 'resistor' && component.kind !== 'lamp') return undefined;
  if (component.ratedPower || component.kind === 'resistor') return component.ratedPower?.value;
  const { ratedVoltage, ratedCurrent } = component;
  return ratedVoltage && ratedCurrent && ratedVoltage.value.mul(ratedCurrent.value);
}

/** That a part of a potentiometer carries more than it may: its rating is that of the whole track, spread evenly along it. */
function overloaded(
  component: Component,
  components: readonly Component[],
  readings: Readings<number | Fraction>,
): Caution[] {
  const { id, hidden } = component;
  if (!isTrack(component) || !component.ratedPower) return [];
  const twin = twinOf(id);
  const other = components.find((each) => each.id === twin);
  if (!other || !isTrack(other)) return [];
  const own = Number(component.resistance.value);
  const most = Math.sqrt(Number(component.ratedPower.value) / (own + Number(other.resistance.value)));
  const current = Math.abs(number(readings.current(id) ?? 0));
  if (own === 0 || current <= most * rounding) return [];
  const data = {
    id,
    current: writeReading(current, 'A').text,
    most: hidden ? '?' : writeReading(most, 'A').text,
    rating: hidden ? '?' : writeReading(component.ratedPower.value, 'W').text,
  };
  return [{ code: 'track overloaded', data, ids: [id] }];
}

/** The hazards of the real circuit. */
export function cautionsOf(
  { components, terminals }: Circuit,
  graph: Graph,
  readings: Readings<number | Fraction>,
): Caution[] {
  const cautions: Caution[] = [];
  // What limits a current itself closes no short circuit: its loop, which may be long, need not be gone round.
  // A network is measured with a supply that is only thought of: that can come to no harm.
  const loops = terminals ? [] : [...graph.slack, ...graph.chords];
  const chords = loops.filter((chord) => !limits(graph, chord));
  const shorts = idsOf(
    graph,
    chords.flatMap((chord) => shorted(graph, loopOf(graph, chord))),
  );
  if (shorts.length > 0) cautions.push({ code: 'cell shorted', data: { supplies: shorts }, ids: shorts });
  for (const component of components) {
    const rating = ratingOf(component);
    const { id, kind } = component;
    const power = (rating && readings.power(id)) ?? 0;
    if (!rating || number(power) <= Number(rating) * rounding * (kind === 'lamp' ? lampMargin : 1)) continue;
    const shown = component.hidden ? '?' : writeReading(rating, 'W').text;
    const data = { id, power: writeReading(power, 'W').text, rating: shown };
    cautions.push({ code: 'over its rating', data, ids: [id] });
  }
  for (const component of components) cautions.push(...overloaded(component, components, readings));
  let [lowest, highest] = [0, 0];
  for (const node of graph.nodes.keys()) {
    const potential = number(readings.potential(node) ?? 0);
    lowest = Math.min(lowest, potential);
    highest = Math.max(highest, potential);
  }
  if (highest - lowest > extraLow * rounding) {
    const data = { limit: writeReading(extraLow, 'V', { figures: 2 }).text };
    cautions.push({ code: 'not extra-low voltage', data, ids: idsOf(graph, graph.supplies) });
  }
  return cautions;
}
