import fc from 'fast-check';
import { circuitFrom, circuitToJSON, type Circuit } from '../../../src/engine/circuit/index.ts';
import { next, solve, type State } from '../../../src/engine/index.ts';
import { anything, parts, realSupply } from './random-circuit.ts';

/** Ohms from 10⁻⁶ to 10⁹. */
const extreme = fc
  .tuple(fc.integer({ min: 10, max: 99 }), fc.integer({ min: -7, max: 7 }))
  .map(([digits, power]) => `${digits}e${power}`);
const curved = fc.oneof(
  fc.constant({ kind: 'led' }),
  fc.constant({ kind: 'diode' }),
  fc.constant({ kind: 'lamp', ratedVoltage: '6', ratedCurrent: '0.5', filament: true }),
);
const sensors = fc.record({ kind: fc.constantFrom('thermistor', 'ldr'), resistance: extreme });
const surroundings = fc.constantFrom(
  {},
  { temperature: '-40' },
  { temperature: '125', light: '0.1' },
  { light: '100000' },
);
const circuits: fc.Arbitrary<Circuit> = fc
  .tuple(
    parts(
      realSupply(extreme),
      fc.oneof(
        { weight: 18, arbitrary: anything(extreme) },
        { weight: 2, arbitrary: curved },
        { weight: 1, arbitrary: sensors },
      ),
    ),
    surroundings,
  )
  .map(([components, where]) => circuitFrom({ version: 1, components, surroundings: where }));

/** The largest sum of currents at a node, as a share of the largest current. */
function residual(circuit: Circuit, state?: State): number {
  const { components } = circuit;
  const solution = solve(circuit, state && { state });
  if (solution.status === 'faulty') {
    const codes = solution.faults.map(({ code }) => code);
    if (codes.length === 0 || codes.includes('not ohmic') || codes.includes('not settled'))
      throw new Error(`no honest fault: ${codes.join()} ${JSON.stringify(circuitToJSON(circuit))}`);
    return 0;
  }
  const sums = new Map<string, number>();
  let largest = 0;
  for (const { id, kind, from, to, condition } of components) {
    const own = (solution.current(id) ?? NaN) * (kind === 'supply' || kind === 'source' ? -1 : 1);
    const current = own + (condition === 'bridged' ? (solution.current(`${id} bridge`) ?? NaN) : 0);
    largest = Math.max(largest, Math.abs(own), Math.abs(current));
    sums.set(from, (sums.get(from) ?? 0) + current);
    sums.set(to, (sums.get(to) ?? 0) - current);
  }
  const most = Math.max(...[...sums.values()].map(Math.abs));
  return largest > 0 ? most / largest : most;
}

/** The same a second later, when every fuse that is above its rating has blown: none is above it then. */
function residualLater(circuit: Circuit): number {
  const later = next(circuit, { blown: [] }, 1);
  if (later.blown.length === 0) return 0;
  if (next(circuit, later, 1) !== later)
    throw new Error(`fuses go on blowing: ${JSON.stringify(circuitToJSON(circuit))}`);
  return residual(circuit, later);
}

/** What a soak has found. */
export interface Soak {
  readonly circuits: number;
  readonly faulty: number;
  /** Those in which time blew a fuse. */
  readonly blown: number;
  /** The largest residual of Kirchhoff's current law, as a share of the largest current. */
  readonly residual: number;
  /** The longest that a circuit took, in milliseconds. */
  readonly slowest: number;
}

/** Solves so many random circuits; throws at the first reading that is not a number, or where more than `limit` is left over at a node. */
export function soak(count: number, seed: number, limit: number, now: () => number): Soak {
  let [faulty, blown, most, slowest] = [0, 0, 0, 0];
  for (const each of fc.sample(circuits, { numRuns: count, seed })) {
    const start = now();
    const later = residualLater(each);
    const left = Math.max(residual(each), later);
    slowest = Math.max(slowest, now() - start);
    if (!(left <= limit)) throw new Error(`${left} is left over: ${JSON.stringify(circuitToJSON(each))}`);
    most = Math.max(most, left);
    if (solve(each).status === 'faulty') faulty += 1;
    if (next(each, { blown: [] }, 1).blown.length > 0) blown += 1;
  }
  return { circuits: count, faulty, blown, residual: most, slowest };
}
