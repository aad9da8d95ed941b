import { quantity, type Quantity } from '../quantity/index.ts';
import { refuse } from './fields.ts';
import type { Component, Range, Track } from './model.ts';
import { outside } from './outside.ts';
import { twinOf } from './twin-of.ts';

/** Whether a component is a part of the track of a potentiometer. */
export const isTrack = (component: Component): component is Track => component.kind === 'potentiometer';

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
