import { actualResistance, hasFault, isSupply, type Circuit, type Component } from '../circuit/index.ts';
import { Fraction, quantity as measure } from '../quantity/index.ts';
import { usualCourse, type Course } from '../words/index.ts';
import type { Because } from './codes.ts';
import type { Varied } from './free.ts';
import { read } from './read.ts';
import { changeOf, reasonsFor } from './reasons.ts';
import { slope, type Turns } from './turn.ts';
import { turnsElsewhere, turnsOf } from './turns-of.ts';

/** How a quantity answers to one thing that is varied. */
export interface Sensitivity {
  /** The derivative: SI units of the quantity for each SI unit of what is varied. */
  readonly value: Fraction;
  readonly direction: 'rises' | 'falls' | 'stays the same';
  /**
   * Why a current, a p.d. or a total resistance does so, link by link, as the resistance rises; empty for a power, where the circuit is not series and
   * parallel round one supply or between its terminals, or where something is secretly wrong with it.
   */
  readonly reasons: readonly Because[];
}

const zero = new Fraction(0);

/** The circuit; a network with a supply at its terminals, by the label that no component may have, with which its resistance answers as it does without. */
function driven({ terminals, ...circuit }: Circuit): Circuit {
  if (!terminals) return circuit;
  const [from, to] = terminals;
  const supply: Component = { id: 'total', kind: 'supply', from, to, emf: measure(1, 'V') };
  return { ...circuit, components: [supply, ...circuit.components] };
}

/** What the derivative of a quantity is made of: products of quantities that each follow a ratio of two straight lines. */
function factorsOf(
  { components, surroundings }: Circuit,
  name: string,
  turns: Turns,
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
    const takes = component !== undefined && isSupply(component);
    return takes || ohms?.n || turns.some(({ what }) => what === id) ? [[`V_${id}`, `I_${id}`]] : [];
  }
  return letter === 'Pr' ? [] : [[name, '']];
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
  const turns = turnsOf(circuit, what);
  const now = (name: string): Fraction => read(turns[0].at(0), name);
  const slopeOf = (name: string): Fraction =>
    turns.reduce((sum, turn) => sum.add(slope(turn, (solution) => read(solution, name))), zero);
  /** Of a p.d. times a current, by the product rule; where no current ever flows the p.d. need not be known. */
  const slopeOfProduct = (pd: string, current: string): Fraction => {
    const [amps, change] = [now(current), slopeOf(current)];
    if (amps.n === 0n && change.n === 0n) return zero;
    return slopeOf(pd)
      .mul(amps)
      .add(change.mul(now(pd)));
  };
  const [, inside] = /^Pr_(.+)/.exec(quantity) ?? [];
  const terms = inside
    ? // r I², by the product rule.
      [
        slopeOf(`r_${inside}`)
          .mul(now(`I_${inside}`))
          .mul(now(`I_${inside}`)),
        now(`r_${inside}`)
          .mul(now(`I_${inside}`))
          .mul(slopeOf(`I_${inside}`))
          .mul(2),
      ]
    : factorsOf(circuit, quantity, turns).map(([a, b]) => (b ? slopeOfProduct(a, b) : slopeOf(a)));
  const value = terms.reduce((sum, term) => sum.add(term), zero);
  const whole = driven(circuit);
  const own = circuit.terminals ? turnsOf(whole, what) : turns;
  const reasons = hasFault(circuit)
    ? []
    : reasonsFor(whole, quantity, own, () => turnsElsewhere(whole, what), style);
  return { value, direction: changeOf(value), reasons };
}
