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
import { endsOf, follow, linesOf, shareOf, switched } from './lines.ts';
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
  return name.replace(/^P_/, 'V_').replace(/^Pr_/, 'I_');
}

/** A power: its line is multiplied by a current, and inside a supply by the resistance. */
interface Power {
  readonly place: number;
  readonly current: string;
  readonly times: number;
}

function powersOf({ components, surroundings }: Circuit, names: readonly string[]): Power[] {
  return names.flatMap((name, place) => {
    const [letter = '', id = ''] = name.split('_', 2);
    const component = components.find((part) => part.id === id);
    if (!component || !/^Pr?$/.test(letter)) return [];
    const times = letter === 'P' ? 1 : Number(actualResistance(component, surroundings) ?? 0);
    return [{ place, current: `I_${id}`, times }];
  });
}

/**
 * The resistance of what the one supply drives: a line as well, only that its share is by what that network shows to the resistor
 * when nothing drives it. Not a number where there is none.
 */
function totalOf(circuit: Circuit, id: string): (ohms: number) => number {
  const network = outside(bridges(circuit));
  const resistor = circuit.components.find((part) => part.id === id);
  if (!network || !resistor) return () => NaN;
  const total = (of: Circuit): number | undefined => solveRounded(of).totalResistance();
  const shorted = total(switched(network, id, true)) ?? NaN;
  const open = total(switched(network, id, false));
  if (open === undefined) return (ohms) => shorted + ohms;
  const seen = total({ ...switched(network, id, false), terminals: [resistor.from, resistor.to] });
  if (!seen) return () => shorted;
  return (ohms) => {
    const share = shareOf(ohms, seen);
    return (share > 0 ? open : shorted) + share * (shorted - open);
  };
}

/** Follows a circuit with curves, or the contact of a potentiometer, which changes two resistances: no quantity moves on a line there, so it is solved at every step, starting from the one before. */
function solvedAnew(circuit: Circuit, id: string, names: readonly string[]): Tracker {
  let last: Solution | undefined;
  return {
    at(ohms, out) {
      const setting = withValue(circuit, id, ohms);
      const now = solverFor(setting)?.solve(setting, last) ?? solve(setting);
      if (now.status === 'faulty') return false;
      last = now;
      names.forEach((name, place) => {
        const value = now.quantity(name);
        if (value !== undefined) out[place] = value;
      });
      return true;
    },
    solution: (ohms) => solve(withValue(circuit, id, ohms)),
  };
}

/**
 * Follows quantities of a circuit (names as in `quantities`) while the resistor `id` changes, or a part of a potentiometer: prepared once, then a multiplication
 * and an addition for each. Currents and p.d.s are lines (see `endsOf`), powers products of two, total resistances quotients.
 */
export function track(circuit: Circuit, id: string, names: readonly string[]): Tracker {
  const isSolvedAnew = (each: Component): boolean => hasCurve(each) || (isTrack(each) && each.id === id);
  if (circuit.components.some(isSolvedAnew)) return solvedAnew(circuit, id, names);
  const ends = endsOf(circuit, id);
  const resistor = circuit.components.find((part) => part.id === id);
  const lines = linesOf(ends, names.map(lineOf));
  const powers = powersOf(circuit, names);
  const currents = linesOf(
    ends,
    powers.map(({ current }) => current),
  );
  const factors = new Float64Array(powers.length);
  const resistances = names.flatMap((name, place) => {
    if (name === `R_${id}` && resistor?.condition !== 'broken')
      return [{ place, read: (ohms: number) => ohms }];
    if (name !== 'R_total' && name !== 'R_loop') return [];
    const total = totalOf(circuit, id);
    const supply = circuit.components.find(isSupply);
    const inside = name === 'R_total' ? 0 : Number((supply && resistanceOf(supply)) ?? NaN);
    return [{ place, read: (ohms: number) => total(ohms) + inside }];
  });
  return {
    at(ohms, out) {
      const share = ends.share(ohms);
      if (Number.isNaN(share)) return false;
      follow(lines, share, out);
      follow(currents, share, factors);
      for (let k = 0; k < powers.length; k++) {
        const power = powers[k];
        if (power) out[power.place] = (out[power.place] ?? 0) * (factors[k] ?? 0) * power.times;
      }
      for (const { place, read } of resistances) {
        const resistance = read(ohms);
        if (!Number.isNaN(resistance)) out[place] = resistance;
      }
      return true;
    },
    solution: (ohms) => solve(withValue(circuit, id, ohms)),
  };
}
