import fc from 'fast-check';
import { circuitToJSON, type Circuit } from '../../../src/engine/circuit/index.ts';
import { solve } from '../../../src/engine/index.ts';
import { anything, circuit, parts, realSupply } from './random-circuit.ts';

/** Ohms from 10⁻⁶ to 10⁹. */
const extreme = fc
  .tuple(fc.integer({ min: 10, max: 99 }), fc.integer({ min: -7, max: 7 }))
  .map(([digits, power]) => `${digits}e${power}`);
const curved = fc.oneof(
  fc.constant({ kind: 'led' }),
  fc.constant({ kind: 'diode' }),
  fc.constant({ kind: 'lamp', ratedVoltage: '6', ratedCurrent: '0.5', filament: true }),
);
const circuits = parts(
  realSupply(extreme),
  fc.oneof({ weight: 9, arbitrary: anything(extreme) }, { weight: 1, arbitrary: curved }),
).map((list) => circuit(list));

/** The largest sum of currents at a node, as a share of the largest current. */
function residual({ components }: Circuit): number {
  const solution = solve({ components });
  if (solution.status === 'faulty') {
    const codes = solution.faults.map(({ code }) => code);
    if (codes.length === 0 || codes.includes('not ohmic') || codes.includes('not settled'))
      throw new Error(`no honest fault: ${codes.join()} ${JSON.stringify(circuitToJSON({ components }))}`);
    return 0;
  }
  const sums = new Map<string, number>();
  let largest = 0;
  for (const { id, kind, from, to, condition } of components) {
    const own = (solution.current(id) ?? NaN) * (kind === 'supply' ? -1 : 1);
    const current = own + (condition === 'bridged' ? (solution.current(`${id} bridge`) ?? NaN) : 0);
    largest = Math.max(largest, Math.abs(own), Math.abs(current));
    sums.set(from, (sums.get(from) ?? 0) + current);
    sums.set(to, (sums.get(to) ?? 0) - current);
  }
  const most = Math.max(...[...sums.values()].map(Math.abs));
  return largest > 0 ? most / largest : most;
}

/** What a soak has found. */
export interface Soak {
  readonly circuits: number;
  readonly faulty: number;
  /** The largest residual of Kirchhoff's current law, as a share of the largest current. */
  readonly residual: number;
  /** The longest that a circuit took, in milliseconds. */
  readonly slowest: number;
}

/** Solves so many random circuits; throws at the first reading that is not a number, or where more than `limit` is left over at a node. */
export function soak(count: number, seed: number, limit: number, now: () => number): Soak {
  let [faulty, most, slowest] = [0, 0, 0];
  for (const each of fc.sample(circuits, { numRuns: count, seed })) {
    const start = now();
    const left = residual(each);
    slowest = Math.max(slowest, now() - start);
    if (!(left <= limit)) throw new Error(`${left} is left over: ${JSON.stringify(circuitToJSON(each))}`);
    most = Math.max(most, left);
    if (solve(each).status === 'faulty') faulty += 1;
  }
  return { circuits: count, faulty, residual: most, slowest };
}
