import {
  actualResistance,
  hasCurve,
  hasFault,
  isResistor,
  isSettable,
  isSupply,
  isTrack,
  nearest,
  resistanceOf,
  twinOf,
  type Circuit,
  type Component,
} from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import { solveExact, type ExactSolution } from '../solve/index.ts';
import { say, usualCourse, type Course } from '../words/index.ts';
import { asResistor, varied, type Varied } from './free.ts';
import { read as readIn } from './read.ts';
import { reasonsFor } from './reasons.ts';
import type { Because } from './codes.ts';

/** How a quantity answers to one thing that is varied. */
export interface Sensitivity {
  /** The derivative: SI units of the quantity for each SI unit of what is varied. */
  readonly value: Fraction;
  readonly direction: 'rises' | 'falls' | 'stays the same';
  /** Why, link by link, as the resistance rises; empty where it is a part of a potentiometer, where the circuit is not series and parallel round one supply, or something is secretly wrong with it. */
  readonly reasons: readonly Because[];
}

const zero = new Fraction(0);

/** The present value of what is varied. */
function valueOf(circuit: Circuit, what: Varied): Fraction {
  const component = circuit.components.find(({ id }) => what === id || what === `r_${id}`);
  if (component?.kind === 'supply' && what === component.id) return component.emf.value;
  if (component?.kind === 'source') return component.current.value;
  if (!component) {
    const suggestion = nearest(
      what,
      circuit.components.map(({ id }) => id),
    );
    throw new RangeError(say({ code: 'no such component', data: { id: what, suggestion } }));
  }
  const isFree = component.kind === 'supply' || isResistor(component) || !isSettable(component);
  const ohms = isFree && !hasCurve(component) && resistanceOf(component, circuit.surroundings);
  if (!ohms) throw new RangeError(`${what} has no value that could change.`);
  return ohms;
}

/** What the derivative of a quantity is made of: products of quantities that each follow a ratio of two straight lines. */
function factorsOf(
  { components, surroundings }: Circuit,
  name: string,
  what: Varied,
): readonly (readonly [string, string])[] {
  const [letter = '', id = ''] = name.split('_');
  const supplies = components.filter(isSupply);
  if (name === 'P_total' || name === 'P_dissipated')
    return supplies.map(({ id, kind }) => [`${kind === 'supply' ? 'E' : 'V'}_${id}`, `I_${id}`]);
  if (letter === 'Pemf') return [[`E_${id}`, `I_${id}`]];
  if (letter === 'P') {
    const component = components.find((each) => each.id === id);
    const ohms = component && actualResistance(component, surroundings);
    // What has no resistance, or conducts nothing, takes nothing whatever else is varied.
    const drives = component !== undefined && isSupply(component);
    return drives || ohms?.n || id === what ? [[`V_${id}`, `I_${id}`]] : [];
  }
  return letter === 'Pr' ? [] : [[name, '']];
}

/**
 * The derivative of a ratio of two straight lines in x, exactly, from its values at x, x + 1 and x + 2: with u and v for what it has
 * changed by at the last two, u·v / (2 (v − u)).
 */
function slope(at: (step: 0 | 1 | 2) => Fraction): Fraction {
  const [f, g, h] = [at(0), at(1), at(2)];
  const [u, v] = [g.sub(f), h.sub(f)];
  return u.n === 0n ? zero : u.mul(v).div(v.sub(u).mul(2));
}

/**
 * How a quantity changes with a resistance (with that of a part of a potentiometer the other part’s), the e.m.f. of a supply, what is inside it (`r_B1`), or a constant current: the exact
 * derivative, and its sign, with reasons in the word of a course. Throws RangeError, which says why, where the quantity has no value, or what is varied none that could change.
 */
export function sensitivity(
  circuit: Circuit,
  quantity: string,
  what: Varied,
  style: Pick<Course, 'wording'> = usualCourse,
): Sensitivity {
  return isPart(circuit, what) ? ofContact(circuit, quantity, what) : ofOne(circuit, quantity, what, style);
}

/** Whether what is varied is a part of a potentiometer. */
const isPart = ({ components }: Circuit, what: Varied): boolean =>
  components.some((each) => each.id === what && isTrack(each));

/** Of a part of a potentiometer: what it gains in resistance the other one loses, so it is the one's derivative less the other's. */
function ofContact(circuit: Circuit, quantity: string, what: Varied): Sensitivity {
  const other = twinOf(what);
  const components = circuit.components.map((each): Component => {
    if (!isTrack(each) || (each.id !== what && each.id !== other)) return each;
    return asResistor(each, each.resistance);
  });
  const [own, less] = [what, other].map(
    (id) => ofOne({ ...circuit, components }, quantity, id, usualCourse).value,
  );
  const value = (own ?? zero).sub(less ?? zero);
  return { value, direction: directionOf(value), reasons: [] };
}

const directionOf = (value: Fraction): Sensitivity['direction'] =>
  value.n === 0n ? 'stays the same' : value.s > 0n ? 'rises' : 'falls';

/** The same for what is varied alone. */
function ofOne(
  circuit: Circuit,
  quantity: string,
  what: Varied,
  style: Pick<Course, 'wording'>,
): Sensitivity {
  const start = valueOf(circuit, what);
  const solutions = new Map<number, ExactSolution>();
  const at = (step: 0 | 1 | 2): ExactSolution => {
    const solution =
      solutions.get(step) ?? solveExact(step ? varied(circuit, what, start.add(step)) : circuit);
    solutions.set(step, solution);
    return solution;
  };
  const read = (name: string, step: 0 | 1 | 2): Fraction => readIn(at(step), name);
  const slopeOf = (name: string): Fraction => slope((step) => read(name, step));
  /** Of a p.d. times a current, by the product rule; where no current ever flows the p.d. need not be known. */
  const slopeOfProduct = (pd: string, current: string): Fraction => {
    const [amps, change] = [read(current, 0), slopeOf(current)];
    if (amps.n === 0n && change.n === 0n) return zero;
    return slopeOf(pd)
      .mul(amps)
      .add(change.mul(read(pd, 0)));
  };
  const [, inside] = /^Pr_(.+)/.exec(quantity) ?? [];
  const terms = inside
    ? // r I², by the product rule.
      [
        slopeOf(`r_${inside}`)
          .mul(read(`I_${inside}`, 0))
          .mul(read(`I_${inside}`, 0)),
        read(`r_${inside}`, 0)
          .mul(read(`I_${inside}`, 0))
          .mul(slopeOf(`I_${inside}`))
          .mul(2),
      ]
    : factorsOf(circuit, quantity, what).map(([a, b]) => (b ? slopeOfProduct(a, b) : slopeOf(a)));
  const value = terms.reduce((sum, term) => sum.add(term), zero);
  return {
    value,
    direction: directionOf(value),
    reasons: hasFault(circuit) ? [] : reasonsFor(circuit, quantity, what, at(0), at(1), style),
  };
}
