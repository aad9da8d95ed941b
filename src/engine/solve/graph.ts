import { resistanceOf, type Circuit, type Component } from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import { grow } from './forest.ts';

/** A node of the circuit, and its place in the forest. */
export interface Node {
  /** Tree branches at this node. */
  readonly twigs: Branch[];
  /** Another node of its piece, unless it is the one that stands for the piece (see `pieceOf`). */
  piece: Node | undefined;
  /** The tree branch towards the root, and the node at its other end; absent at a root. */
  up: { readonly branch: Branch; readonly node: Node } | undefined;
  /** Tree branches between it and its root. */
  depth: number;
  /** Its place in `Graph.nodes`; −1 until it has one. */
  place: number;
}

/** A component that conducts: along it the potential rises by its e.m.f. and falls by current × resistance. */
export interface Branch {
  readonly component: Component;
  readonly place: number;
  /** Its current is positive from tail to head: inside a supply that is from the negative to the positive terminal. */
  readonly tail: Node;
  readonly head: Node;
  /** Whole numbers in the graph's units. */
  ohms: bigint;
  volts: bigint;
  /** `ohms` as a floating-point number. */
  resistance: number;
  /** The order in which the forest grows: wires first, then ideal supplies, then by resistance. */
  rank: number;
  /** The loops through it, by their rows in the equations; `along` where a loop runs from tail to head. */
  readonly loops: { readonly row: number; readonly along: boolean }[];
}

/** A component between its nodes and, if it conducts, its branch. */
export interface Part {
  readonly component: Component;
  readonly from: Node;
  readonly to: Node;
  readonly branch: Branch | undefined;
}

/**
 * A circuit as branches, with a spanning forest of the smallest resistances. A branch outside the forest, a chord, closes one
 * loop through the forest; the currents of the chords that have resistance are the unknowns.
 */
export interface Graph {
  readonly byName: ReadonlyMap<string, Node>;
  /** The components by id. */
  readonly byId: ReadonlyMap<string, Part>;
  /** Every node, each after the node above it; the node of 0 V is the first. */
  readonly nodes: readonly Node[];
  readonly branches: readonly Branch[];
  /** Those of the supplies. */
  readonly supplies: readonly Branch[];
  /** Chord k closes the loop of row k. */
  readonly chords: readonly Branch[];
  /** Chords that close a loop without any resistance. */
  readonly slack: readonly Branch[];
  /** How many units of the branches are one ohm, one volt. */
  readonly ohm: bigint;
  readonly volt: bigint;
}

const zero = new Fraction(0);

function commonMultiple(a: bigint, b: bigint): bigint {
  return a % b ? new Fraction(a).lcm(b).n : a;
}

/** A fraction counted in a unit of which there are `unit` in one: a whole number. */
function counted({ s, n, d }: Fraction, unit: bigint): bigint {
  const whole = d === unit ? n : n * (unit / d);
  return s < 0n ? -whole : whole;
}

/** Compiles a circuit: all resistances in one unit and all e.m.f.s in another, such that every one is a whole number. */
export function graphOf({ components }: Circuit): Graph {
  const byName = new Map<string, Node>();
  const nodeOf = (name: string): Node => {
    let node = byName.get(name);
    if (!node) byName.set(name, (node = { twigs: [], piece: undefined, up: undefined, depth: 0, place: -1 }));
    return node;
  };
  const byId = new Map<string, Part>();
  const branches: Branch[] = [];
  const values: Fraction[] = [];
  let ohm = 1n;
  let volt = 1n;
  for (const component of components) {
    const from = nodeOf(component.from);
    const to = nodeOf(component.to);
    const resistance = resistanceOf(component);
    if (!resistance) {
      byId.set(component.id, { component, from, to, branch: undefined });
      continue;
    }
    const isSupply = component.kind === 'supply';
    if (resistance.d !== ohm) ohm = commonMultiple(ohm, resistance.d);
    if (isSupply) volt = commonMultiple(volt, component.emf.value.d);
    const branch: Branch = {
      component,
      place: branches.length,
      tail: isSupply ? to : from,
      head: isSupply ? from : to,
      ohms: 0n,
      volts: 0n,
      resistance: 0,
      rank: 0,
      loops: [],
    };
    byId.set(component.id, { component, from, to, branch });
    branches.push(branch);
    values.push(resistance);
  }
  const supplies: Branch[] = [];
  branches.forEach((branch, place) => {
    const { component } = branch;
    branch.ohms = counted(values[place] ?? zero, ohm);
    branch.resistance = Number(branch.ohms);
    branch.rank = branch.resistance || (component.kind === 'supply' ? -1 : -2);
    if (component.kind !== 'supply') return;
    branch.volts = counted(component.emf.value, volt);
    supplies.push(branch);
  });
  const { nodes, chords, slack } = grow(branches, supplies[0]?.tail, byName.values());
  return { byName, byId, nodes, branches, supplies, chords, slack, ohm, volt };
}
