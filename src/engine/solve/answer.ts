import { nearest, resistanceOf, type Circuit } from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import { cautionsOf } from './cautions.ts';
import type { Flow } from './flow.ts';
import { pieceOf } from './forest.ts';
import type { Branch, Graph, Node, Part } from './graph.ts';
import { isNamed, lettersOf, quantities } from './names.ts';
import { remarksOf } from './remarks.ts';
import type { Caution, Fault, Readings, Reason, Remark } from './solution.ts';
import { outside } from './terminals.ts';

/** The arithmetic of one kind of number. */
export interface Arithmetic<N> {
  readonly of: (exact: Fraction) => N;
  readonly sum: (a: N, b: N) => N;
  readonly product: (a: N, b: N) => N;
  readonly quotient: (a: N, b: N) => N;
  /** Solves another circuit in the same arithmetic. */
  readonly solve: (circuit: Circuit) => Readings<N>;
}

const zero = new Fraction(0);

/** The letter of a name and what follows: `I_R1` is I and R1. */
function split(name: string): readonly [string, string] {
  const cut = name.indexOf('_');
  return [name.slice(0, cut), name.slice(cut + 1)];
}

/** The readings of a circuit, each worked out when it is asked for. */
export class Answer<N extends number | Fraction> implements Readings<N> {
  readonly faults: readonly Fault[];
  readonly #circuit: Circuit;
  readonly #graph: Graph;
  readonly #arithmetic: Arithmetic<N>;
  /** Absent where there is a fault. */
  readonly #flow: Flow<N> | undefined;
  /** The same, but absent from a network without a supply of its own: it has no currents. */
  readonly #driven: Flow<N> | undefined;

  constructor(
    circuit: Circuit,
    graph: Graph,
    faults: readonly Fault[],
    flow: Flow<N> | undefined,
    arithmetic: Arithmetic<N>,
  ) {
    this.#circuit = circuit;
    this.#graph = graph;
    this.faults = faults;
    this.#arithmetic = arithmetic;
    this.#flow = flow;
    this.#driven = circuit.terminals || graph.supplies.length === 0 ? undefined : flow;
  }

  get status(): 'solved' | 'faulty' {
    return this.#flow ? 'solved' : 'faulty';
  }

  get remarks(): readonly Remark[] {
    return this.#driven ? remarksOf(this.#circuit, this.#graph) : [];
  }

  get cautions(): readonly Caution[] {
    return cautionsOf(this.#circuit, this.#graph, this);
  }

  potential(node: string): N | undefined {
    return this.#between(this.#graph.byName.get(node), this.#graph.nodes[0]);
  }

  current(id: string): N | undefined {
    const part = this.#part(id);
    if (!part || !this.#driven) return undefined;
    return part.branch ? this.#driven.current(part.branch) : this.#arithmetic.of(zero);
  }

  voltage(id: string): N | undefined {
    const part = this.#part(id);
    return part && this.#between(part.from, part.to);
  }

  power(id: string): N | undefined {
    const current = this.current(id);
    return this.#part(id)?.branch ? this.#both('product', this.voltage(id), current) : current;
  }

  resistance(id: string): N | undefined {
    const component = this.#part(id)?.component;
    const ohms = component && resistanceOf(component);
    return ohms && this.#arithmetic.of(ohms);
  }

  totalResistance(): N | undefined {
    const main = this.#main;
    if (!main?.loops.length || !this.#flow) return undefined;
    if (main.volts)
      return this.#both('quotient', this.#flow.between(main.head, main.tail), this.#flow.current(main));
    // Nothing drives a supply of 0 V, but what it is joined to has its resistance all the same.
    const network = outside(this.#circuit);
    return network && this.#arithmetic.solve(network).totalResistance();
  }

  totalCurrent(): N | undefined {
    return this.#main && this.#driven?.current(this.#main);
  }

  quantity(name: string): N | undefined {
    return this.#read(name)?.[0];
  }

  reason(name: string): Reason | undefined {
    const found = this.#read(name);
    const { supplies } = this.#graph;
    if (!found) {
      return {
        code: 'no such quantity',
        data: { name, suggestion: nearest(name, quantities(this.#circuit)) },
      };
    }
    const [letter, id] = split(name);
    const part = this.#part(id);
    if (found[0] !== undefined) {
      return letter === 'I' && this.#isDead(part ? part.branch : supplies[0])
        ? { code: 'no current', data: {} }
        : undefined;
    }
    if (letter === 'R' && part) return { code: 'no finite resistance', data: { id } };
    if (!this.#flow) return { code: 'circuit has a fault', data: {} };
    if (!this.#driven && !(this.#main && name === 'R_total')) return { code: 'no supply', data: { name } };
    if (letter === 'V' || letter === 'P') return { code: 'no steady reading', data: {} };
    if (this.#main) return { code: 'no path', data: {} };
    return {
      code: 'several supplies',
      data: { name, instead: supplies.map(({ component }) => `I_${component.id}`) },
    };
  }

  /** The one supply. */
  get #main(): Branch | undefined {
    const { supplies } = this.#graph;
    return supplies.length === 1 ? supplies[0] : undefined;
  }

  /** A component that the circuit itself has: the id of a test supply is ''. */
  #part(id: string): Part | undefined {
    return id ? this.#graph.byId.get(id) : undefined;
  }

  /** What two quantities make if both have a value. */
  #both(operation: 'sum' | 'product' | 'quotient', a: N | undefined, b: N | undefined): N | undefined {
    return a === undefined || b === undefined ? undefined : this.#arithmetic[operation](a, b);
  }

  #between(p: Node | undefined, q: Node | undefined): N | undefined {
    return p && q && pieceOf(p) === pieceOf(q) ? this.#driven?.between(p, q) : undefined;
  }

  /** Whether nothing can flow: it conducts nothing, lies on no loop, or nothing drives its piece round a loop. */
  #isDead(branch: Branch | undefined): boolean {
    if (!branch?.loops.length) return true;
    const piece = pieceOf(branch.tail);
    return !this.#graph.supplies.some(({ tail, loops }) => loops.length > 0 && pieceOf(tail) === piece);
  }

  /** What a name stands for, as a list of its value; undefined if there is no such quantity. */
  #read(name: string): [N | undefined] | undefined {
    const [letter, id] = split(name);
    const { byName, supplies } = this.#graph;
    const component = this.#part(id)?.component;
    if (component && lettersOf(component).includes(letter)) {
      const [current, ohms] = [this.current(id), this.resistance(id)];
      const emf = component.kind === 'supply' ? this.#arithmetic.of(component.emf.value) : undefined;
      switch (letter) {
        case 'I':
          return [current];
        case 'V':
          return [this.voltage(id)];
        case 'P':
          return [this.power(id)];
        case 'E':
          return [emf];
        case 'Pemf':
          return [this.#both('product', emf, current)];
        case 'Pr':
          return [this.#both('product', this.#both('product', ohms, current), current)];
        default:
          return [ohms];
      }
    }
    switch (name) {
      case 'I_total':
        return [this.totalCurrent()];
      case 'R_total':
        return [this.totalResistance()];
      case 'R_loop':
        return [
          this.#driven &&
            this.#both('sum', this.totalResistance(), this.resistance(this.#main?.component.id ?? '')),
        ];
      case 'P_total':
      case 'P_dissipated':
        return [
          supplies.reduce<N | undefined>(
            (power, { component }) => this.#both('sum', power, this.quantity(`Pemf_${component.id}`)),
            this.#driven && this.#arithmetic.of(zero),
          ),
        ];
    }
    // A junction may have an underline in its name.
    for (let cut = id.indexOf('_'); letter === 'V' && cut > 0; cut = id.indexOf('_', cut + 1)) {
      const [p, q] = [id.slice(0, cut), id.slice(cut + 1)].map((end) =>
        isNamed(end) ? byName.get(end) : undefined,
      );
      if (p && q) return [this.#between(p, q)];
    }
    return undefined;
  }
}
