import { faultIn, hasCurve, type Circuit } from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import {
  solveAt,
  straightened,
  type Fault,
  type Solution,
  type Solver,
  type Straightened,
} from '../solve/index.ts';
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
  const ids = [...resistances.keys()];
  if (!settled) return faulty(solution, { code: 'not settled', data: { ids }, ids });
  const blocked = blockedOf(straight, settled);
  return blocked ? faulty(solution, blocked) : solution;
}

/** Volts that diodes have across them against their direction only where a constant current is to pass them: their leaks are so small. */
const blocking = 1e4;

/** That diodes leave a constant current no path, if they do. */
function blockedOf(
  { components, lines }: Straightened,
  settled: ReadonlyMap<number, number>,
): Fault | undefined {
  const source = components.find(({ kind }, place) => kind === 'source' && lines[place]?.amperes);
  const emfs = lines.reduce((sum, { volts }) => sum + Math.abs(volts), 0);
  const at = [...settled].flatMap(([place, volts]) =>
    -volts > blocking + emfs ? [components[place]?.id ?? ''] : [],
  );
  if (!source || at.length === 0) return undefined;
  return { code: 'current without a path', data: { id: source.id, at }, ids: [source.id, ...at] };
}

/** The same readings, none of which can be trusted. */
function faulty(solution: Solution, fault: Fault): Solution {
  const none = (): undefined => undefined;
  return {
    status: 'faulty',
    faults: [fault],
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
