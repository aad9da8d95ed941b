import {
  isSecondTwin,
  isSwitch,
  isTrack,
  lastSetting,
  nearestSetting,
  settingAt,
  withValue,
  type Circuit,
  type Component,
  type Range,
} from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';

/** Something that a pupil may turn: a slider or a switch. */
export interface Dial {
  readonly id: string;
  /** The number of its last place, the first being 0. */
  readonly last: number;
  /** Where it stands. */
  readonly now: number;
  /** Ohms, volts or amperes at a place; 0 and 1 for a switch. */
  readonly at: (place: number) => Fraction;
  readonly turn: (circuit: Circuit, place: number) => Circuit;
  /** Whether quantities are ratios of straight lines in it. */
  readonly isSlider: boolean;
}

function slider(
  id: string,
  range: Range,
  value: Fraction,
  set: (value: Fraction) => string | Fraction,
): Dial {
  const at = (place: number): Fraction => settingAt(range, place);
  return {
    id,
    last: lastSetting(range),
    now: nearestSetting(range, value),
    at,
    turn: (circuit, place) => withValue(circuit, id, set(at(place))),
    isSlider: true,
  };
}

function dialsOf(component: Component): Dial[] {
  const { id } = component;
  if (component.kind === 'resistor' && component.range)
    return [slider(id, component.range, component.resistance.value, (value) => value)];
  // Along a potentiometer no quantity is a ratio of straight lines: every place is tried, as those of a switch are.
  if (isTrack(component) && component.range && !isSecondTwin(component))
    return [
      {
        ...slider(id, component.range, component.resistance.value, (value) => value),
        isSlider: false,
      },
    ];
  if (component.kind === 'source' && component.range)
    return [slider(id, component.range, component.current.value, (value) => value)];
  if (component.kind === 'supply') {
    const { emf, range, internalResistance, internalRange } = component;
    const inside = internalResistance?.value ?? new Fraction(0);
    return [
      ...(range ? [slider(id, range, emf.value, (value) => value)] : []),
      ...(internalRange ? [slider(id, internalRange, inside, (value) => `r ${value.toFraction()}`)] : []),
    ];
  }
  if (!isSwitch(component) || isSecondTwin(component)) return [];
  const turn = (circuit: Circuit, place: number): Circuit => withValue(circuit, id, place === 1);
  return [
    { id, last: 1, now: component.closed ? 1 : 0, at: (place) => new Fraction(place), turn, isSlider: false },
  ];
}

/** All that can be turned in a circuit. */
export const dials = ({ components }: Circuit): Dial[] => components.flatMap(dialsOf);

/** The ids of the components that can be turned. */
export const turnable = (circuit: Circuit): readonly string[] => [
  ...new Set(dials(circuit).map(({ id }) => id)),
];

/** How many settings these have together. */
export const settingsOf = (turned: readonly Dial[]): number =>
  turned.reduce((count, { last }) => count * (last + 1), 1);

/** The circuit with every dial at a place. */
export const turned = (circuit: Circuit, all: readonly Dial[], places: readonly number[]): Circuit =>
  all.reduce((at, dial, k) => dial.turn(at, places[k] ?? dial.now), circuit);

/** A text that is the same for all settings of a circuit, and another one where it differs otherwise. */
export function unset(circuit: Circuit): string {
  const all = dials(circuit);
  const first = turned(
    circuit,
    all,
    all.map(() => 0),
  );
  const how = ['prefix', 'decimals']; // a value is written in
  return JSON.stringify(first, (key, value: unknown): unknown =>
    how.includes(key) ? undefined : typeof value === 'bigint' ? `${value}` : value,
  );
}

/**
 * Settings of several dials in a fixed order, the present one first: every one of them where there are at most so many, else corners
 * and then places spread evenly (an additive recurrence with the roots of primes).
 */
export function combinations(all: readonly Dial[], most: number): readonly (readonly number[])[] {
  const count = settingsOf(all);
  const present = all.map(({ now }) => now);
  if (count <= most)
    return Array.from({ length: count }, (_, place) => {
      let rest = place;
      return all.map(({ last, now }) => {
        const turn = rest % (last + 1);
        rest = Math.floor(rest / (last + 1));
        return (now + turn) % (last + 1);
      });
    });
  const corners = Math.min(2 ** all.length, most >> 2);
  return Array.from({ length: most }, (_, k) =>
    k === 0
      ? present
      : all.map(({ last }, dial) =>
          k <= corners
            ? ((k - 1) >> dial) & 1
              ? last
              : 0
            : Math.floor(((k * Math.sqrt(prime(dial))) % 1) * (last + 1)),
        ),
  );
}

/** A prime for each dial, up to forty of them (L. Euler 1772). */
const prime = (dial: number): number => dial * dial + dial + 41;
