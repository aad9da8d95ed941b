import {
  actualResistance,
  faultIn,
  isSupply,
  isTrack,
  type Circuit,
  type Component,
  type CurrentSource,
} from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import { grow, type Ends, type Forest } from './forest.ts';
import { isOut, sentThrough } from './sent.ts';
import { inUnits } from './units.ts';

/**
 * A circuit as branches between numbered nodes: a branch is the place of its component. Along it the potential rises by its e.m.f. and
 * falls by current × resistance.
 */
export interface Graph extends Ends, Forest {
  readonly components: readonly Component[];
  /** Of each branch, undefined for what conducts nothing. */
  readonly resistances: readonly (Fraction | undefined)[];
  /** Of each branch, undefined for what has no e.m.f. */
  readonly emfs: readonly (Fraction | undefined)[];
  /** Of each branch, undefined for what is no supply of constant current. */
  readonly amperes: readonly (Fraction | undefined)[];
  /** What those supplies send through each branch (see `sentThrough`); absent where there are none. */
  readonly sent: readonly Fraction[] | undefined;
  /** Of each branch its e.m.f. less what the sent current drops across its resistance: what drives the loops. */
  readonly rises: readonly (Fraction | undefined)[];
  /** Resistances in the unit `1/ohm`, Infinity for what conducts nothing, and rises in the unit `1/volt` (see `inUnits`). */
  readonly ohms: readonly number[];
  readonly volts: readonly number[];
  readonly ohm: number;
  readonly volt: number;
  readonly supplies: readonly number[];
  /** The node of the 0 V mark, where there is one. */
  readonly zero: number | undefined;
}

/** Whether a component leaves what is beside it the current, where neither has any resistance: a contact at the end of its track takes none there. */
export const isAside = (component: Component | undefined): boolean =>
  component !== undefined && isTrack(component) && component.resistance.value.n === 0n;

/** The forest of the smallest resistances: wires first, then ideal supplies, then parts of potentiometers of 0 Ω, then by resistance; the piece of the 0 V mark, or else of the first supply, is the first. */
export function forestOf(
  ends: Ends,
  ohms: readonly number[],
  { components, emfs, supplies, zero }: Pick<Graph, 'components' | 'emfs' | 'supplies' | 'zero'>,
): Forest {
  const ranks = new Array<number>(ohms.length);
  ohms.forEach((resistance, branch) => {
    ranks[branch] = resistance || (isAside(components[branch]) ? -1 : emfs[branch] ? -2 : -3);
  });
  return grow(ends, ranks, zero ?? ends.tails[supplies[0] ?? 0] ?? 0);
}

const exactly = {
  zero: new Fraction(0),
  sum: (a: Fraction, b: Fraction): Fraction => (b.n ? a.add(b) : a),
  negative: (a: Fraction): Fraction => a.neg(),
};

/** What a supply of constant current sends: nothing where it is taken out, or something is wrong with it. */
const givenBy = (source: CurrentSource): Fraction => (isOut(source) ? exactly.zero : source.current.value);

/** An e.m.f. less what a current drops across a resistance. */
function risen(emf?: Fraction, ohms?: Fraction, current?: Fraction): Fraction | undefined {
  return ohms?.n && current?.n ? (emf ?? exactly.zero).sub(ohms.mul(current)) : emf;
}

/**
 * Compiles a circuit: all resistances in one unit and all rises in another, such that every one is a whole number; where their
 * denominators have too little in common for that, in ohms and in volts. What is secretly wrong with a component counts: a supply at
 * fault drives nothing. Resistances `at` an operating point stand for those of curves.
 */
export function graphOf(
  { components, zero: marked, surroundings }: Circuit,
  at?: ReadonlyMap<string, Fraction>,
): Graph {
  const nodes = new Map<string, number>();
  const nodeOf = (name: string): number => {
    let node = nodes.get(name);
    if (node === undefined) nodes.set(name, (node = nodes.size));
    return node;
  };
  const count = components.length;
  const tails = new Array<number>(count);
  const heads = new Array<number>(count);
  const resistances = new Array<Fraction | undefined>(count);
  const emfs = new Array<Fraction | undefined>(count);
  const amperes = new Array<Fraction | undefined>(count);
  const supplies: number[] = [];
  components.forEach((component, branch) => {
    const from = nodeOf(component.from);
    const to = nodeOf(component.to);
    const fault = faultIn(component);
    const drives = isSupply(component);
    if (drives) supplies.push(branch);
    tails[branch] = drives ? to : from;
    heads[branch] = drives ? from : to;
    const ohms = actualResistance(component, surroundings);
    resistances[branch] = ohms && !fault ? (at?.get(component.id) ?? ohms) : ohms;
    emfs[branch] = component.kind === 'supply' ? (fault ? exactly.zero : component.emf.value) : undefined;
    amperes[branch] = component.kind === 'source' ? givenBy(component) : undefined;
  });
  const [ohm, ohms] = inUnits(resistances, Infinity);
  const ends = { nodes, tails, heads };
  const zero = marked === undefined ? undefined : nodes.get(marked);
  const forest = forestOf(ends, ohms, { components, emfs, supplies, zero });
  const { order, up, depths, roots, chords, slack } = forest;
  const sent = amperes.some(Boolean) ? sentThrough({ tails, heads, order, up }, amperes, exactly) : undefined;
  const rises = sent ? emfs.map((emf, branch) => risen(emf, resistances[branch], sent[branch])) : emfs;
  const [volt, volts] = inUnits(rises, 0);
  return {
    components,
    nodes,
    tails,
    heads,
    resistances,
    emfs,
    amperes,
    sent,
    rises,
    ohms,
    volts,
    ohm,
    volt,
    supplies,
    zero,
    order,
    up,
    depths,
    roots,
    chords,
    slack,
  };
}
