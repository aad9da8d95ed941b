import { isTrack, twinOf, type Circuit, type Component } from '../circuit/index.ts';
import { writeReading, type Fraction } from '../quantity/index.ts';
import { loopOf, ohmsOutside, shorted } from './faults.ts';
import type { Graph } from './graph.ts';
import { idsOf } from './ids-of.ts';
import { isBeyond, marked, number, written } from './limit.ts';
import type { Caution, Readings } from './solution.ts';

/** Ohms that are no more than those of a joint: half a metre of lead has them (1 mm² of copper: 0.017 Ω a metre). */
const joint = 0.01;
/** Amperes, more than which neither leads nor supplies of a school bench carry (common practice). */
const strong = 10;
/** Volts d.c. up to which parts that may be touched count as extra-low voltage (IEC 60335-1, as taken over by IEC 62282-5-1:2012, 3.23). */
const extraLow = 60;
/** How much of its rated power a lamp, a heater or a motor may take before it is worth a word (common practice). */
const margin = 1.2;
/** The power that a component is made for, and how that is said; undefined if it is not known. */
function ratingOf(component: Component): readonly [watts: number, text: string] | undefined {
  const { kind, hidden } = component;
  if (kind !== 'resistor' && kind !== 'lamp' && kind !== 'heater' && kind !== 'motor') return undefined;
  if (component.ratedPower) return [Number(component.ratedPower.value), marked(component.ratedPower, hidden)];
  if (kind === 'resistor' || !component.ratedVoltage || !component.ratedCurrent) return undefined;
  const watts = component.ratedVoltage.value.mul(component.ratedCurrent.value);
  return [Number(watts), written(watts, 'W', hidden)];
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
  const current = Math.abs(number(readings.current(id)));
  if (own === 0 || !isBeyond(current, most)) return [];
  const data = {
    id,
    current: written(current, 'A'),
    most: written(most, 'A', hidden),
    rating: marked(component.ratedPower, hidden),
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
  const chords = loops.filter((chord) => ohmsOutside(graph, chord) <= joint);
  const shorts = idsOf(
    graph,
    chords.flatMap((chord) => {
      const current = number(readings.current(graph.components[chord]?.id ?? ''));
      return shorted(graph, loopOf(graph, chord), isBeyond(Math.abs(current), strong) ? joint : 0);
    }),
  );
  if (shorts.length > 0) cautions.push({ code: 'cell shorted', data: { supplies: shorts }, ids: shorts });
  for (const component of components) {
    const [watts, rating] = ratingOf(component) ?? [];
    const { id, kind } = component;
    const power = (rating ? readings.power(id) : undefined) ?? 0;
    if (!rating || !isBeyond(number(power), Number(watts) * (kind === 'resistor' ? 1 : margin))) continue;
    const data = { id, power: written(power, 'W'), rating };
    cautions.push({ code: 'over its rating', data, ids: [id] });
  }
  for (const component of components) cautions.push(...overloaded(component, components, readings));
  let [lowest, highest] = [0, 0];
  for (const node of graph.nodes.keys()) {
    const potential = number(readings.potential(node));
    lowest = Math.min(lowest, potential);
    highest = Math.max(highest, potential);
  }
  if (isBeyond(highest - lowest, extraLow)) {
    const data = { limit: writeReading(extraLow, 'V', { figures: 2 }).text };
    cautions.push({ code: 'not extra-low voltage', data, ids: idsOf(graph, graph.supplies) });
  }
  return cautions;
}
