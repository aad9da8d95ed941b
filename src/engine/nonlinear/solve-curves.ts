import { faultIn, hasCurve, type Circuit } from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import { solveAt, straightened, type Solution, type Solver } from '../solve/index.ts';
import type { Curve } from './curve.ts';
import { curveOf } from './curve-of.ts';
import { settle } from './newton.ts';

/** A number as the fraction that it is: its bits are a whole number times a power of two. */
function exactly(x: number): Fraction {
  let [whole, below] = [x, 1n];
  while (!Number.isInteger(whole)) {
    whole *= 2;
    below *= 2n;
  }
  return new Fraction(BigInt(whole), below);
}

function solveCurves(circuit: Circuit, near?: Solution): Solution {
  const straight = straightened(circuit);
  const curves = new Map<number, Curve>();
  straight.components.forEach((component, place) => {
    if (hasCurve(component) && component.condition !== 'broken' && !faultIn(component))
      curves.set(place, curveOf(component));
  });
  const start = near && Float64Array.from(straight.components, ({ id }) => near.voltage(id) ?? 0);
  const settled = straight.faults.length > 0 ? new Map<number, number>() : settle(straight, curves, start);
  const resistances = new Map<string, Fraction>();
  for (const [place, curve] of curves) {
    const volts = settled?.get(place) ?? 0;
    const { current, slope } = curve(volts);
    const ohms = current === 0 ? 1 / slope : volts / current;
    resistances.set(straight.components[place]?.id ?? '', exactly(ohms));
  }
  const solution = solveAt(circuit, resistances);
  if (settled) return solution;
  const ids = [...resistances.keys()];
  return unsettled(solution, ids);
}

/** The same readings, none of which can be trusted. */
function unsettled(solution: Solution, ids: readonly string[]): Solution {
  const none = (): undefined => undefined;
  return {
    status: 'faulty',
    faults: [{ code: 'not settled', data: { ids }, ids }],
    remarks: [],
    cautions: [],
    potential: none,
    current: none,
    voltage: none,
    power: none,
    resistance: none,
    totalResistance: none,
    totalCurrent: none,
    quantity: none,
    reason: (name) => solution.reason(name) ?? { code: 'circuit has a fault', data: {} },
  };
}

/** Solves circuits with filaments and diodes, for `equip`; networks without a supply have no operating point, and no one resistance. */
export const curves: Solver = {
  serves: ({ components, terminals }) => !terminals && components.some(hasCurve),
  solve: solveCurves,
};
