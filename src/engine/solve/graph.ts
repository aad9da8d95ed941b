import { actualResistance, faultIn, type Circuit, type Component } from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import { grow, type Ends, type Forest } from './forest.ts';
import { inUnits } from './units.ts';

/**
 * A circuit as branches between numbered nodes: a branch is the place of its component. Along it the potential rises by its e.m.f. and
 * falls by current × resistance.
 */
export interface Graph extends Ends, Forest {
  readonly components: readonly Component[];
  /** Of each branch, undefined for what conducts nothing. */
  readonly resistances: readonly (Fraction | undefined)[];
  /** Of each branch, undefined for what is no supply. */
  readonly emfs: readonly (Fraction | undefined)[];
  /** Resistances in the unit `1/ohm`, Infinity for what conducts nothing, and e.m.f.s in the unit `1/volt` (see `inUnits`). */
  readonly ohms: readonly number[];
  readonly volts: readonly number[];
  readonly ohm: number;
  readonly volt: number;
  readonly supplies: readonly number[];
}

const none = new Fraction(0);

/** The forest of the smallest resistances: wires first, then ideal supplies, then by resistance; the first supply's piece is the first. */
export function forestOf(ends: Ends, ohms: readonly number[], emfs: readonly unknown[]): Forest {
  const ranks = ohms.map((resistance, branch) => resistance || (emfs[branch] ? -1 : -2));
  return grow(ends, ranks, ends.tails[Math.max(0, emfs.findIndex(Boolean))] ?? 0);
}

/**
 * Compiles a circuit: all resistances in one unit and all e.m.f.s in another, such that every one is a whole number; where their
 * denominators have too little in common for that, in ohms and in volts. What is secretly wrong with a component counts: a supply at
 * fault drives nothing. Resistances `at` an operating point stand for those of curves.
 */
export function graphOf({ components, surroundings }: Circuit, at?: ReadonlyMap<string, Fraction>): Graph {
  const nodes = new Map<string, number>();
  const nodeOf = (name: string): number => {
    const known = nodes.get(name);
    if (known !== undefined) return known;
    nodes.set(name, nodes.size);
    return nodes.size - 1;
  };
  const [tails, heads, supplies]: [number[], number[], number[]] = [[], [], []];
  const [resistances, emfs]: [(Fraction | undefined)[], (Fraction | undefined)[]] = [[], []];
  for (const component of components) {
    const from = nodeOf(component.from);
    const to = nodeOf(component.to);
    const fault = faultIn(component);
    const emf = component.kind === 'supply' ? (fault ? none : component.emf.value) : undefined;
    if (emf) supplies.push(tails.length);
    tails.push(emf ? to : from);
    heads.push(emf ? from : to);
    const ohms = actualResistance(component, surroundings);
    resistances.push(ohms && !fault ? (at?.get(component.id) ?? ohms) : ohms);
    emfs.push(emf);
  }
  const [ohm, ohms] = inUnits(resistances, Infinity);
  const [volt, volts] = inUnits(emfs, 0);
  const { order, up, depths, roots, chords, slack, loops } = forestOf({ nodes, tails, heads }, ohms, emfs);
  return {
    components,
    nodes,
    tails,
    heads,
    resistances,
    emfs,
    ohms,
    volts,
    ohm,
    volt,
    supplies,
    order,
    up,
    depths,
    roots,
    chords,
    slack,
    loops,
  };
}
