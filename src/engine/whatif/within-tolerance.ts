import {
  actualResistance,
  faultIn,
  type Circuit,
  type Component,
  type CurrentSource,
} from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import { solveExact } from '../solve/index.ts';
import { looseOf, worstCorners, type Loose } from './corners.ts';
import { varied } from './free.ts';
import { read as readIn } from './read.ts';

/** The least and the most that a quantity can be. */
export interface Bounds {
  readonly low: Fraction;
  readonly high: Fraction;
  /** False where the circuit is too large to try all: there may be something worse. */
  readonly proved: boolean;
}

const zero = new Fraction(0);

const read = (circuit: Circuit, quantity: string): Fraction => readIn(solveExact(circuit), quantity);

function bounds(values: readonly Fraction[], proved: boolean): Bounds {
  const [first = zero, ...rest] = values;
  return rest.reduce<Bounds>(
    ({ low, high }, value) => ({
      low: value.compare(low) < 0 ? value : low,
      high: value.compare(high) > 0 ? value : high,
      proved,
    }),
    { low: first, high: first, proved },
  );
}

/** The bounds of E·I − r·I² while a current I is within its own. */
function ofCurrent(emf: Fraction, inside: Fraction, { low, high, proved }: Bounds): Bounds {
  const power = (current: Fraction): Fraction => current.mul(emf).sub(current.mul(current).mul(inside));
  const peak = inside.n === 0n ? low : emf.div(inside.mul(2));
  const turns = peak.compare(low) > 0 && peak.compare(high) < 0 ? [peak] : [];
  return bounds([low, high, ...turns].map(power), proved);
}

/**
 * The bounds of what a loose resistor takes. To it the others are a supply of e.m.f. E with R₀ inside: it takes most where its resistance is
 * nearest to R₀, and nothing where E is zero.
 */
function ofLoose(circuit: Circuit, { id, ends: [least, greatest] }: Loose, others: readonly Loose[]): Bounds {
  const current = `I_${id}`;
  const { corners, proved } = worstCorners(circuit, others, current);
  const signs = new Set<number>();
  const powers = corners.flatMap((corner) => {
    const [a, b] = [least, greatest].map((ohms) => read(varied(corner, id, ohms), current));
    if (!a || !b) return [];
    signs.add(a.compare(0));
    const found = [a.mul(a).mul(least), b.mul(b).mul(greatest)];
    if (a.equals(b)) return found;
    const inside = b.mul(greatest).sub(a.mul(least)).div(a.sub(b));
    if (inside.compare(least) <= 0 || inside.compare(greatest) >= 0) return found;
    const emf = a.mul(least.add(inside));
    return [...found, emf.mul(emf).div(inside.mul(4))];
  });
  return bounds(signs.has(1) && signs.has(-1) ? [...powers, zero] : powers, proved);
}

/** The bounds of V·I while the p.d. of a constant current is within its own. */
const ofGiven = (source: CurrentSource, { low, high, proved }: Bounds): Bounds => {
  const isOut = source.condition === 'broken' || faultIn(source) !== undefined;
  return bounds(
    [low, high].map((volts) => (isOut ? zero : volts.mul(source.current.value))),
    proved,
  );
};

/** The bounds of the power of one component, or of what is lost inside a supply. */
function ofPower(circuit: Circuit, letter: string, component: Component, loose: readonly Loose[]): Bounds {
  const { id } = component;
  const own = loose.find((each) => each.id === id);
  const others = loose.filter((each) => each !== own);
  read(circuit, `${letter}_${id}`);
  if (component.kind === 'source') return ofGiven(component, within(circuit, `V_${id}`, loose));
  if (own) return ofLoose(circuit, own, others);
  const ohms = actualResistance(component, circuit.surroundings) ?? zero;
  const current = within(circuit, `I_${id}`, loose);
  const gives = component.kind === 'supply' && letter === 'P';
  return gives ? ofCurrent(component.emf.value, ohms, current) : ofCurrent(zero, ohms.neg(), current);
}

function within(circuit: Circuit, quantity: string, loose: readonly Loose[]): Bounds {
  const { corners, proved } = worstCorners(circuit, loose, quantity);
  return bounds(
    corners.map((corner) => read(corner, quantity)),
    proved,
  );
}

/**
 * The worst case of a quantity while each resistor is anywhere within its stated tolerance, exactly. Throws RangeError where the quantity has
 * no value.
 */
export function withinTolerance(circuit: Circuit, quantity: string): Bounds {
  const loose = looseOf(circuit);
  const [, letter, id] = /^(P|Pr)_(.+)/.exec(quantity) ?? [];
  const component = circuit.components.find((each) => each.id === id);
  return letter && component ? ofPower(circuit, letter, component, loose) : within(circuit, quantity, loose);
}
