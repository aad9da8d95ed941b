import { nearest, type Circuit, type Component } from '../circuit/index.ts';
import { Fraction, quantity } from '../quantity/index.ts';
import { solveExact } from '../solve/index.ts';
import { say } from '../words/index.ts';
import { meant } from './free.ts';

/** What a circuit is like, seen from two of its nodes: a supply of this e.m.f. with this resistance inside (L. Thévenin 1883). */
export interface Equivalent {
  /** Volts of the first node against the second, with nothing between them. */
  readonly emf: Fraction;
  /** Ohms. */
  readonly resistance: Fraction;
}

/**
 * The Thévenin equivalent of a circuit at two of its nodes: the p.d. between them, and the resistance between them with every e.m.f. and every
 * constant current at 0. Undefined where there is none: a fault, or nothing that joins them. Throws RangeError, which says why, where there is no such
 * node, or something does not obey Ohm’s law, so that no one supply would do at every current.
 */
export function thevenin(circuit: Circuit, p: string, q: string): Equivalent | undefined {
  const nodes = [...new Set(circuit.components.flatMap(({ from, to }) => [from, to]))];
  const unknown = [p, q].find((node) => !nodes.includes(node));
  if (unknown !== undefined) {
    const data = { id: unknown, suggestion: nearest(unknown, nodes) };
    throw new RangeError(say({ code: 'no such component', data }));
  }
  const solution = solveExact(circuit);
  const curved = solution.faults.find(({ code }) => code === 'not ohmic');
  if (curved) throw new RangeError(say(curved));
  const [high, low] = [solution.potential(p), solution.potential(q)];
  const silent = circuit.components.map(silenced);
  const resistance = solveExact({ ...circuit, components: silent, terminals: [p, q] }).totalResistance();
  return high && low && resistance && { emf: high.sub(low), resistance };
}

/** A component without what it drives: an e.m.f. of 0 V, a current of 0 A. */
function silenced(each: Component): Component {
  const { id, from, to } = each;
  if (each.kind === 'source') return { id, kind: 'switch', from, to, ...stateOf(each), closed: false };
  if (each.kind !== 'supply') return each;
  const resistance = each.internalResistance ?? quantity(0, 'Ω');
  return { id, kind: 'resistor', from, to, ...stateOf(each), resistance };
}

const stateOf = ({ condition, fault }: Component): object => ({
  ...(condition && { condition }),
  ...(fault && { fault }),
});

/** The load that takes most power. */
export interface BestLoad {
  /** Ohms. */
  readonly resistance: Fraction;
  /** Watts that it takes then. */
  readonly power: Fraction;
}

/**
 * The resistance at which a component takes most power: what the rest of the circuit shows to it (M. H. von Jacobi 1840), and that power, E²/4R.
 * Undefined where the rest drives nothing through it, or has no resistance of its own, so that a smaller load always takes more. Throws RangeError where
 * there is no such component, or something in the rest does not obey Ohm’s law.
 */
export function maximumPower(circuit: Circuit, id: string): BestLoad | undefined {
  const load = meant(circuit, id);
  const rest = { ...circuit, components: circuit.components.filter((each) => each !== load) };
  const seen = thevenin(rest, load.from, load.to);
  if (!seen || seen.resistance.n === 0n || seen.emf.n === 0n) return undefined;
  const { emf, resistance } = seen;
  return { resistance, power: emf.mul(emf).div(resistance.mul(4)) };
}
