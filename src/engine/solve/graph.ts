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
  /** Whole numbers in the graph's units, and the same as floating-point numbers. */
  readonly ohms: bigint;
  readonly volts: bigint;
  readonly resistance: number;
  readonly emf: number;
  /** The loops through it: k where loop k runs from tail to head, ~k where it runs from head to tail. */
  readonly loops: number[];
}

/**
 * A circuit as branches, with a spanning forest of the smallest resistances. A branch outside the forest, a chord, closes one
 * loop through the forest; the currents of the chords that have resistance are the unknowns.
 */
export interface Graph {
  readonly byName: ReadonlyMap<string, Node>;
  /** Every node, each after the node above it; the node of 0 V is the first. */
  readonly nodes: readonly Node[];
  readonly branches: readonly Branch[];
  /** Chord k closes loop k. */
  readonly chords: readonly Branch[];
  /** Chords that close a loop without any resistance. */
  readonly slack: readonly Branch[];
  /** How many units of the branches are one ohm, one volt. */
  readonly ohm: bigint;
  readonly volt: bigint;
}

const zero = new Fraction(0);

function commonMultiple(a: bigint, b: bigint): bigint {
  if (a % b === 0n) return a;
  let [x, y] = [a, b];
  while (y) [x, y] = [y, x % y];
  return (a / x) * b;
}

/** Compiles a circuit: all resistances in one unit and all e.m.f.s in another, such that every one is a whole number. */
export function graphOf({ components }: Circuit): Graph {
  const byName = new Map<string, Node>();
  const nodeOf = (name: string): Node => {
    let node = byName.get(name);
    if (!node) byName.set(name, (node = { twigs: [], piece: undefined, up: undefined, depth: 0, place: -1 }));
    return node;
  };
  const conducting: { component: Component; from: Node; to: Node; resistance: Fraction; emf: Fraction }[] =
    [];
  let [ohm, volt] = [1n, 1n];
  let ground: Node | undefined;
  for (const component of components) {
    const [from, to] = [nodeOf(component.from), nodeOf(component.to)];
    const resistance = resistanceOf(component);
    if (!resistance) continue;
    const emf = component.kind === 'supply' ? component.emf.value : zero;
    ohm = commonMultiple(ohm, resistance.d);
    volt = commonMultiple(volt, emf.d);
    if (component.kind === 'supply') ground ??= to;
    conducting.push({ component, from, to, resistance, emf });
  }
  const branches = conducting.map(({ component, from, to, resistance, emf }, place): Branch => {
    const supply = component.kind === 'supply';
    const ohms = resistance.n * (ohm / resistance.d);
    const volts = emf.s * emf.n * (volt / emf.d);
    return {
      component,
      place,
      tail: supply ? to : from,
      head: supply ? from : to,
      ohms,
      volts,
      resistance: Number(ohms),
      emf: Number(volts),
      loops: [],
    };
  });
  return { byName, branches, ohm, volt, ...grow(branches, ground, byName.values()) };
}
