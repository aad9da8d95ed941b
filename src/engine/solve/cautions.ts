import type { Circuit, Component } from '../circuit/index.ts';
import { Fraction, writeReading } from '../quantity/index.ts';
import type { Graph } from './graph.ts';
import { idsOf, isShortCircuit, loopOf } from './loop.ts';
import type { Caution, Readings } from './solution.ts';

/** Volts d.c. up to which parts that may be touched count as extra-low voltage (IEC 60335-1, as taken over by IEC 62282-5-1:2012, 3.23). */
const extraLow = 60;
/** How much of its rated power a lamp may take before it is worth a word (common practice). */
const lampMargin = 1.2;
/** Keeps what takes just its rating from being over it by a rounding. */
const rounding = 1 + 1e-9;

/** The most power that a component is made for; undefined if that is not known. */
function ratingOf(component: Component): Fraction | undefined {
  if (component.kind === 'resistor') return component.ratedPower?.value;
  if (component.kind !== 'lamp') return undefined;
  const { ratedPower, ratedVoltage, ratedCurrent } = component;
  if (ratedPower) return ratedPower.value;
  return ratedVoltage && ratedCurrent && ratedVoltage.value.mul(ratedCurrent.value);
}

/** The hazards of the real circuit. */
export function cautionsOf<N extends number | Fraction>(
  { components }: Circuit,
  { branches, chords, slack, byName }: Graph,
  readings: Readings<N>,
): Caution[] {
  const cautions: Caution[] = [];
  const shorts = [...slack, ...chords].map(loopOf).filter(isShortCircuit);
  const shorted = idsOf(
    branches.filter(({ component }) => shorts.some(({ supplies }) => supplies.includes(component.id))),
  );
  if (shorted.length > 0) {
    cautions.push({ code: 'cell shorted', data: { supplies: shorted }, ids: shorted });
  }
  for (const component of components) {
    const { id, kind } = component;
    const rating = ratingOf(component);
    const power = rating && readings.power(id);
    if (power === undefined || !rating) continue;
    if (Number(power) <= Number(rating) * rounding * (kind === 'lamp' ? lampMargin : 1)) continue;
    const data = { id, power: writeReading(power, 'W').text, rating: writeReading(rating, 'W').text };
    cautions.push({ code: 'over its rating', data, ids: [id] });
  }
  const potentials = [...byName.keys()].map((node) => Number(readings.potential(node) ?? 0));
  const voltage = Math.max(...potentials) - Math.min(...potentials);
  if (voltage > extraLow * rounding) {
    const ids = idsOf(branches.filter(({ volts }) => volts));
    cautions.push({ code: 'not extra-low voltage', data: { voltage: writeReading(voltage, 'V').text }, ids });
  }
  return cautions;
}
