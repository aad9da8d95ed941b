import { nearest, resistanceOf, type Circuit } from '../circuit/index.ts';
import type { Fraction } from '../quantity/index.ts';
import { addressOf, partsOf, type Address, type Part } from './address.ts';
import { cautionsOf } from './cautions.ts';
import type { Flow } from './flow.ts';
import { pieceOf } from './forest.ts';
import type { Branch, Graph, Node } from './graph.ts';
import { quantities, type Letter, type Total } from './names.ts';
import { remarksOf } from './remarks.ts';
import type { Caution, Fault, Readings, Reason, Remark } from './solution.ts';
import { outside } from './terminals.ts';

/** The arithmetic of one kind of number. */
export interface Arithmetic<N> {
  readonly of: (exact: Fraction) => N;
  readonly sum: (a: N, b: N) => N;
  readonly product: (a: N, b: N) => N;
  readonly quotient: (a: N, b: N) => N;
  readonly zero: N;
  /** Solves another circuit in the same arithmetic. */
  readonly solve: (circuit: Circuit) => Readings<N>;
}

/** The readings of a circuit, each worked out when it is asked for. */
export class Answer<N extends number | Fraction> implements Readings<N> {
  readonly faults: readonly Fault[];
  readonly #circuit: Circuit;
  readonly #graph: Graph;
  readonly #flow: Flow<N> | undefined;
  readonly #arithmetic: Arithmetic<N>;
  readonly #supplies: readonly Branch[];
  #known: ReadonlyMap<string, Part> | undefined;

  /** `flow` is absent where there is a fault. */
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
    this.#flow = flow;
    this.#arithmetic = arithmetic;
    this.#supplies = graph.branches.filter(({ component }) => component.kind === 'supply');
  }

  get status(): 'solved' | 'faulty' {
    return this.#flow ? 'solved' : 'faulty';
  }

  get remarks(): readonly Remark[] {
    return this.#flow ? remarksOf(this.#circuit, this.#graph) : [];
  }

  get cautions(): readonly Caution[] {
    return cautionsOf(this.#circuit, this.#graph, this);
  }

  potential(node: string): N | undefined {
    return this.#between(this.#graph.byName.get(node), this.#graph.nodes[0]);
  }

  current(id: string): N | undefined {
    return this.#letter('I', this.#parts.get(id));
  }

  voltage(id: string): N | undefined {
    return this.#letter('V', this.#parts.get(id));
  }

  power(id: string): N | undefined {
    return this.#letter('P', this.#parts.get(id));
  }

  resistance(id: string): N | undefined {
    return this.#letter('R', this.#parts.get(id));
  }

  totalResistance(): N | undefined {
    return this.#total('R_total');
  }

  totalCurrent(): N | undefined {
    return this.#total('I_total');
  }

  quantity(name: string): N | undefined {
    const address = addressOf(name, this.#parts, this.#graph);
    return address && this.#value(address);
  }

  reason(name: string): Reason | undefined {
    const address = addressOf(name, this.#parts, this.#graph);
    if (!address) {
      return {
        code: 'no such quantity',
        data: { name, suggestion: nearest(name, quantities(this.#circuit)) },
      };
    }
    if (this.#value(address) !== undefined) {
      const carries =
        'total' in address ? address.total === 'I_total' : 'part' in address && address.letter === 'I';
      const part = 'part' in address ? address.part : { branch: this.#supplies[0] };
      return carries && this.#isDead(part.branch) ? { code: 'no current', data: {} } : undefined;
    }
    if ('part' in address && address.letter === 'R') {
      return { code: 'no finite resistance', data: { id: address.part.component.id } };
    }
    if (!this.#flow) return { code: 'circuit has a fault', data: {} };
    if (this.#isUndriven && (name !== 'R_total' || this.#supplies.length === 0)) {
      return { code: 'no supply', data: { name } };
    }
    if (!('total' in address)) return { code: 'no steady reading', data: {} };
    if (this.#supplies.length === 1) return { code: 'no path', data: {} };
    const instead = this.#supplies.map(({ component }) => `I_${component.id}`);
    return { code: 'several supplies', data: { name, instead } };
  }

  get #parts(): ReadonlyMap<string, Part> {
    return (this.#known ??= partsOf(this.#circuit, this.#graph));
  }

  /** A network without a supply of its own has no currents. */
  get #isUndriven(): boolean {
    return this.#supplies.length === 0 || this.#circuit.terminals !== undefined;
  }

  /** Whether nothing can flow: it conducts nothing, lies on no loop, or nothing drives its piece round a loop. */
  #isDead(branch: Branch | undefined): boolean {
    if (!branch || branch.loops.length === 0) return true;
    const piece = pieceOf(branch.tail);
    return !this.#supplies.some(({ tail, loops }) => loops.length > 0 && pieceOf(tail) === piece);
  }

  #between(p: Node | undefined, q: Node | undefined): N | undefined {
    if (!p || !q || this.#isUndriven || pieceOf(p) !== pieceOf(q)) return undefined;
    return this.#flow?.between(p, q);
  }

  #value(address: Address): N | undefined {
    if ('total' in address) return this.#total(address.total);
    return 'part' in address ? this.#letter(address.letter, address.part) : this.#between(...address.ends);
  }

  #letter(letter: Letter, part: Part | undefined): N | undefined {
    if (!part) return undefined;
    const { of, product, zero } = this.#arithmetic;
    const { component, branch } = part;
    const { byName } = this.#graph;
    switch (letter) {
      case 'E':
        return component.kind === 'supply' ? of(component.emf.value) : undefined;
      case 'R':
      case 'r': {
        const ohms = resistanceOf(component);
        return ohms && of(ohms);
      }
      case 'V':
        return this.#between(byName.get(component.from), byName.get(component.to));
      case 'I':
        if (!this.#flow || this.#isUndriven) return undefined;
        return branch ? this.#flow.current(branch) : zero;
      case 'P':
      case 'Pemf':
      case 'Pr': {
        const current = this.#letter('I', part);
        if (current === undefined || !branch) return current;
        const along = this.#letter(letter === 'P' ? 'V' : letter === 'Pr' ? 'r' : 'E', part);
        if (along === undefined) return undefined;
        return product(letter === 'Pr' ? product(along, current) : along, current);
      }
    }
  }

  #total(total: Total): N | undefined {
    const { of, sum, quotient, zero, solve } = this.#arithmetic;
    const flow = this.#flow;
    const branches = total === 'P_total' ? this.#supplies : this.#graph.branches;
    const main = this.#supplies.length === 1 ? this.#supplies[0] : undefined;
    if (!flow || (this.#isUndriven && total !== 'R_total')) return undefined;
    switch (total) {
      case 'P_total':
      case 'P_dissipated':
        return branches.reduce((power, branch) => {
          const own = this.#letter(total === 'P_total' ? 'Pemf' : 'Pr', {
            component: branch.component,
            branch,
          });
          return own === undefined ? power : sum(power, own);
        }, zero);
      case 'I_total':
        return main && flow.current(main);
      case 'R_loop': {
        const outside = this.#total('R_total');
        const inside = main && resistanceOf(main.component);
        return outside === undefined || !inside ? undefined : sum(outside, of(inside));
      }
      case 'R_total': {
        if (!main || main.loops.length === 0) return undefined;
        if (main.volts) return quotient(flow.between(main.head, main.tail), flow.current(main));
        // Nothing drives a supply of 0 V, but what it is joined to has its resistance all the same.
        const network = outside(this.#circuit);
        return network && solve(network).totalResistance();
      }
    }
  }
}
