import { quantity, type Quantity } from '../quantity/index.ts';
import { refuse } from './fields.ts';
import type { Component, Range, Track } from './model.ts';
import { outside } from './outside.ts';
import { twinOf } from './twin-of.ts';

/** Whether a component is a part of the track of a potentiometer. */
export const isTrack = (component: Component): component is Track => component.kind === 'potentiometer';

/** The two parts of a potentiometer by the label of the whole: R1a and R1b of R1. None where a component is called so, or none is a part of it. */
export function trackParts(
  components: readonly Component[],
  id: string,
): readonly [Track, Track] | undefined {
  const parts = components.filter(isTrack).filter((each) => each.id.slice(0, -1) === id);
  const [one, other] = parts.sort((a, b) => (a.id < b.id ? -1 : 1));
  return one && other && !components.some((each) => each.id === id) ? [one, other] : undefined;
}

/** The labels of the potentiometers of a circuit as wholes. */
export const wholesIn = (components: readonly Component[]): string[] =>
  components
    .filter(isTrack)
    .map(({ id }) => id.slice(0, -1))
    .filter((id, place, ids) => ids.indexOf(id) < place && trackParts(components, id));

/** The ends of a track as one, from that of its first part on, the way in which that part is counted. */
export function endsOfTrack([one, other]: readonly [Track, Track]): readonly [from: string, to: string] {
  const isForward = one.to === other.from || one.to === other.to;
  const contact = isForward ? one.to : one.from;
  const far = other.from === contact ? other.to : other.from;
  return isForward ? [one.from, far] : [far, one.to];
}

/** What one part leaves of a whole, written the way another quantity is. */
const rest = (whole: Quantity, part: Quantity, like: Quantity): Quantity =>
  quantity(whole.value.sub(part.value), like.unit, like.prefix, like.decimals);

/** The resistance of the whole track. */
export const whole = (one: Track, other: Track): Quantity => {
  const { value, unit, prefix } = one.resistance;
  return quantity(value.add(other.resistance.value), unit, prefix);
};

/** The range of the other part of a track: what that of this one leaves of the whole. */
export const mirrored = (range: Range, all: Quantity): Range => ({
  ...range,
  min: rest(all, range.max, range.max),
  max: rest(all, range.min, range.max),
});

/** The components with the other part of a potentiometer as one of them leaves it. Throws CircuitFormatError where that would be less than 0 Ω. */
export function slid(
  components: readonly Component[],
  { id, resistance: before }: Track,
  { resistance: after }: Track,
): readonly Component[] {
  return components.map((each) => {
    if (each.id !== twinOf(id) || !isTrack(each)) return each;
    const all = { ...before, value: before.value.add(each.resistance.value) };
    const resistance = rest(all, after, each.resistance);
    if (resistance.value.s < 0n) refuse(id, 'out of range', outside(after, quantity(0, 'Ω'), all));
    return { ...each, resistance };
  });
}
