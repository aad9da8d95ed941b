import {
  Fraction,
  forwardPoint,
  hasCurve,
  quantity,
  ratedResistance,
  roundUp,
  solve,
  withValue,
  type Circuit,
  type Component,
  type Curved,
  type Quantity,
  type Range,
} from '../../engine/core.ts';
import { once, type Snapshot } from '../link/index.ts';
import type { Turned } from './turned.ts';

/** What has no characteristic: it drives, it measures, or it opens and closes. */
const others: readonly Component['kind'][] = [
  'supply',
  'source',
  'ammeter',
  'voltmeter',
  'switch',
  'push',
  'changeover',
  'wire',
  'fuse',
];

const first = once(solve);

/** Settings at which it is read, at least. */
const steps = 100;

/** How much further than at its rating a diode is drawn, in volts: its current has about doubled by then. */
const little = 0.03;

/** The p.d. at which a component with a curve has its rating, in volts. */
function ratedVolts(component: Curved): number {
  if (component.kind !== 'lamp') return Number(forwardPoint(component)[0].value);
  const ohms = Number(ratedResistance(component) ?? 0);
  const { ratedVoltage, ratedCurrent, ratedPower } = component;
  if (ratedVoltage) return Number(ratedVoltage.value);
  return ratedCurrent ? Number(ratedCurrent.value) * ohms : Math.sqrt(Number(ratedPower?.value ?? 0) * ohms);
}

/** From where to where a characteristic is drawn, in volts: a little beyond the rating, or twice what the component has at the start. */
function reachOf(component: Component, start: Circuit, now: number): readonly [number, number] {
  const curved = hasCurve(component);
  if (curved && component.kind !== 'lamp') {
    const volts = ratedVolts(component);
    return [-volts, Math.max(volts + little, now)];
  }
  const usual = curved ? 1.25 * ratedVolts(component) : 2 * Math.abs(first(start).voltage(component.id) ?? 0);
  const most = Number(roundUp(Math.max(usual || 10, Math.abs(now))));
  return [-most, most];
}

/** The characteristic that is meant by the p.d. across a component (`V_L1`): the component alone on a supply that is turned. */
export function characteristicOf(
  { circuit, start, readings }: Snapshot,
  against: string,
): Turned | undefined {
  const name = against.replace(/^U_/, 'V_');
  const component = circuit.components.find(({ id }) => name === `V_${id}`);
  if (!component || others.includes(component.kind) || component.hidden) return undefined;
  const now = Number(readings.quantity(name) ?? 0);
  const [low, high] = reachOf(component, start, now);
  const step = roundUp((high - low) / steps);
  const volts = (value: Fraction): Quantity => quantity(value, 'V');
  const range: Range = {
    min: volts(step.mul(Math.floor(low / Number(step)))),
    max: volts(step.mul(Math.ceil(high / Number(step)))),
    step: volts(step),
  };
  const supply: Component = { id: 'B', kind: 'supply', from: 'a', to: 'b', emf: quantity(0, 'V'), range };
  const { surroundings } = circuit;
  const alone: Circuit = {
    components: [supply, { ...component, from: 'a', to: 'b' }],
    ...(surroundings && { surroundings }),
  };
  return {
    what: 'B',
    name,
    now: volts(new Fraction(now)),
    range,
    stated: true,
    alone: withValue(alone, component.id, 'intact'),
  };
}
