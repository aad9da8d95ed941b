import {
  actualResistance,
  bridges,
  hasCurve,
  isSupply,
  isTrack,
  resistanceOf,
  withValue,
  type Circuit,
  type Component,
} from '../circuit/index.ts';
import { solverFor } from './equip.ts';
import {
  endsOf,
  follow,
  growing,
  linesOf,
  reachOf,
  switched,
  together,
  type Ends,
  type Lines,
} from './lines.ts';
import type { Solution } from './solution.ts';
import { solve, solveRounded } from './solve.ts';
import { outside } from './terminals.ts';

/** The readings of a circuit as one resistor changes. */
export interface Tracker {
  /**
   * Writes the quantities for a resistance in ohms, in their order, and allocates nothing. False, and nothing written, where the
   * circuit has a fault at that setting. A quantity without a value (`solution(value).reason` says why) is left as it is.
   */
  at(ohms: number, out: Float64Array): boolean;
  /** The whole solution for a resistance in ohms. Throws CircuitFormatError for what is none of the resistor's settings. */
  solution(ohms: number): Solution;
}

/** The line that a quantity starts from: the power of a component from its p.d., that inside a supply from its current. */
function lineOf(name: string): string {
  // What all the resistances take is what the e.m.f.s give, and that is a line.
  if (name === 'P_dissipated' || name === 'P_total') return 'P_total';
  return name.startsWith('P') ? name.replace(/^P_/, 'V_').replace(/^Pr_/, 'I_') : name;
}

/** Powers: the line at each place is multiplied by a current, and inside a supply by the resistance. */
interface Powers {
  readonly places: Int32Array;
  readonly times: Float64Array;
  /** The currents on their lines, one after the other, and where they come to stand. */
  readonly currents: Lines;
  readonly factors: Float64Array;
}

/** The powers among these names; undefined where there are none. */
function powersOf(
  { components, surroundings }: Circuit,
  ends: Ends,
  names: readonly string[],
): Powers | undefined {
  const places = [...names.keys()].filter((place) => /^Pr?_/.test(names[place] ?? ''));
  const found = places.flatMap((place) => {
    const [letter = '', id = ''] = names[place]?.split('_', 2) ?? [];
    const component = components.find((part) => part.id === id);
    if (!component) return [];
    const times = letter === 'P' ? 1 : Number(actualResistance(component, surroundings) ?? 0);
    return [{ place, current: `I_${id}`, times }];
  });
  if (found.length === 0) return undefined;
  return {
    places: Int32Array.from(found, ({ place }) => place),
    times: Float64Array.from(found, ({ times }) => times),
    currents: linesOf(
      ends,
      found.map(({ current }) => current),
    ),
    factors: new Float64Array(found.length),
  };
}

/**
 * The resistance of what the one supply drives, and `inside` on top: a line as well, only that its share is by what that network shows to
 * the resistor when nothing drives it. None where there is no such resistance.
 */
function totalOf(circuit: Circuit, { id, from, to }: Component, place: number, inside: number): Lines[] {
  const network = outside(bridges(circuit));
  if (!network) return [];
  const total = (of: Circuit): number | undefined => solveRounded(of).totalResistance();
  const shorted = total(switched(network, id, true));
  if (shorted === undefined) return [];
  const open = total(switched(network, id, false));
  if (open === undefined) return [growing(place, shorted + inside)];
  const seen = total({ ...switched(network, id, false), terminals: [from, to] }) ?? 0;
  // Where it shows none, the resistor changes nothing.
  return [
    together(reachOf(seen > 0 ? seen : 1), [[place, shorted + inside, (seen > 0 ? open : shorted) + inside]]),
  ];
}

/** Follows a circuit with curves, or the contact of a potentiometer, which changes two resistances: no quantity moves on a line there, so it is solved at every step, starting from the one before. */
function solvedAnew(circuit: Circuit, id: string, names: readonly string[]): Tracker['at'] {
  let last: Solution | undefined;
  return (ohms, out) => {
    const setting = withValue(circuit, id, ohms);
    const now = solverFor(setting)?.solve(setting, last) ?? solve(setting);
    if (now.status === 'faulty') return false;
    last = now;
    names.forEach((name, place) => {
      const value = now.quantity(name);
      if (value !== undefined) out[place] = value;
    });
    return true;
  };
}

/**
 * Follows quantities of a circuit (names as in `quantities`) while the resistor `id` changes, or a part of a potentiometer: prepared once, then a multiplication
 * and an addition for each. Currents and p.d.s are lines (see `endsOf`), powers products of two, total resistances quotients.
 */
export function track(circuit: Circuit, id: string, names: readonly string[]): Tracker {
  const isSolvedAnew = (each: Component): boolean => hasCurve(each) || (isTrack(each) && each.id === id);
  const solution = (ohms: number): Solution => solve(withValue(circuit, id, ohms));
  if (circuit.components.some(isSolvedAnew)) return { at: solvedAnew(circuit, id, names), solution };
  const ends = endsOf(circuit, id);
  const resistor = circuit.components.find((part) => part.id === id);
  const lines = linesOf(ends, names.map(lineOf));
  const powers = powersOf(circuit, ends, names);
  const resistances = names.flatMap((name, place): Lines[] => {
    if (name === `R_${id}` && resistor?.condition !== 'broken') return [growing(place, 0)];
    if (!resistor || (name !== 'R_total' && name !== 'R_loop')) return [];
    const supply = circuit.components.find(isSupply);
    const inside = name === 'R_total' ? 0 : Number((supply && resistanceOf(supply)) ?? NaN);
    return totalOf(circuit, resistor, place, inside);
  });
  const setting = new Float64Array(1);
  return {
    at(ohms, out) {
      setting[0] = ohms;
      if (!follow(lines, setting, out)) return false;
      if (powers) {
        const { places, times, currents, factors } = powers;
        follow(currents, setting, factors);
        for (let k = 0; k < places.length; k++) {
          const place = places[k] ?? 0;
          out[place] = (out[place] ?? 0) * (factors[k] ?? 0) * (times[k] ?? 0);
        }
      }
      for (const resistance of resistances) follow(resistance, setting, out);
      return true;
    },
    solution,
  };
}
