import { asMarked, bridges, endsOfTrack, trackParts, resistanceOf, type Circuit } from '../circuit/index.ts';
import type { Fraction } from '../quantity/index.ts';
import { ammetersAcross, type AmmetersAcross } from './ammeters.ts';
import { benchCautions, benchRemarks } from './bench.ts';
import { cautionsOf } from './cautions.ts';
import type { Flow } from './flow.ts';
import { graphOf, type Graph } from './graph.ts';
import { isNamed, lettersOf, meantBy } from './names.ts';
import { conditionsOf, remarksOf } from './remarks.ts';
import { onLoops } from './sent.ts';
import type { Caution, Fault, Readings, Reason, Remark } from './solution.ts';
import { outside } from './terminals.ts';

/** The arithmetic of one kind of number. */
export interface Arithmetic<N> {
  readonly zero: N;
  readonly of: (exact: Fraction) => N;
  readonly sum: (a: N, b: N) => N;
  readonly product: (a: N, b: N) => N;
  readonly quotient: (a: N, b: N) => N;
  /** Solves another circuit in the same arithmetic. */
  readonly solve: (circuit: Circuit) => Readings<N>;
}

/** The letter of a name and what follows: `I_R1` is I and R1; a label alone is no name. */
function split(name: string): readonly [string, string] {
  const cut = name.indexOf('_');
  return cut < 0 ? ['', ''] : [name.slice(0, cut), name.slice(cut + 1)];
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
  /** Of each branch 1 if it lies on a loop. */
  #looped: Uint8Array | undefined;
  /** The place that was read last, and all by id. */
  #last = 0;
  #places: Map<string, number> | undefined;
  #across: AmmetersAcross | undefined;

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
    if (!this.#driven) return conditionsOf(this.#circuit);
    return [
      ...remarksOf(this.#graph, this.#drawn),
      ...benchRemarks(this.#circuit, this.#ammeters, this),
      ...conditionsOf(this.#circuit),
    ];
  }

  get cautions(): readonly Caution[] {
    const bench = this.#circuit.terminals ? [] : benchCautions(this.#circuit, this.#ammeters, this);
    return [...cautionsOf(this.#circuit, this.#graph, this), ...bench];
  }

  /** The circuit as it is drawn, whatever is secretly wrong with it. */
  get #drawn(): Graph {
    const drawn = asMarked(this.#circuit);
    return drawn === this.#circuit ? this.#graph : graphOf(bridges(drawn));
  }

  get #ammeters(): AmmetersAcross {
    return (this.#across ??= ammetersAcross(this.#drawn));
  }

  potential(node: string): N | undefined {
    const { nodes, order } = this.#graph;
    return this.#between(nodes.get(node), order[0]);
  }

  current(id: string): N | undefined {
    return this.#currentIn(this.#place(id));
  }

  voltage(id: string): N | undefined {
    return this.#voltageOf(this.#place(id));
  }

  power(id: string): N | undefined {
    return this.#powerOf(this.#place(id));
  }

  resistance(id: string): N | undefined {
    return this.#resistanceOf(this.#place(id));
  }

  totalResistance(): N | undefined {
    const main = this.#main;
    if (main === undefined || !this.#flow || !this.#isOnLoop(main)) return undefined;
    const { tails, heads, emfs, amperes } = this.#graph;
    if ((emfs[main] ?? amperes[main])?.n)
      return this.#both(
        'quotient',
        this.#flow.between(heads[main] ?? 0, tails[main] ?? 0),
        this.#flow.current(main),
      );
    // Nothing drives a supply of 0 V or 0 A, but what it is joined to has its resistance all the same.
    const network = outside(bridges(this.#circuit));
    return network && this.#arithmetic.solve(network).totalResistance();
  }

  totalCurrent(): N | undefined {
    return this.#currentIn(this.#main);
  }

  quantity(name: string): N | undefined {
    return this.#read(name)?.[0];
  }

  reason(name: string): Reason | undefined {
    const found = this.#read(name);
    const { supplies, components } = this.#graph;
    const [letter, id] = split(name);
    if (!found) {
      if (/^[IP]$/.test(letter) && trackParts(this.#circuit.components, id))
        return { code: 'of two parts', data: { id, instead: [`${name}a`, `${name}b`] } };
      return { code: 'no such quantity', data: { name, suggestion: meantBy(name, this.#circuit) } };
    }
    const place = this.#place(id);
    if (found[0] !== undefined) {
      return letter === 'I' && this.#isDead(place ?? supplies[0])
        ? { code: 'no current', data: {} }
        : undefined;
    }
    if (/^r$/i.test(letter) && place !== undefined) return { code: 'no finite resistance', data: { id } };
    if (!this.#flow) return { code: 'circuit has a fault', data: {} };
    const isMain = this.#main !== undefined;
    if (!this.#driven && !(isMain && name === 'R_total')) return { code: 'no supply', data: { name } };
    if (letter === 'V' || letter === 'P') return { code: 'no steady reading', data: {} };
    if (isMain) return { code: 'no path', data: {} };
    return {
      code: 'several supplies',
      data: { name, instead: supplies.map((supply) => `I_${components[supply]?.id ?? ''}`) },
    };
  }

  /** The one supply. */
  get #main(): number | undefined {
    const { supplies } = this.#graph;
    return supplies.length === 1 ? supplies[0] : undefined;
  }

  /** The place of a component, or of a wire that bridges one; a test supply is not found. */
  #place(id: string): number | undefined {
    const { components } = this.#graph;
    // What is read is mostly of the same component again, or of the next.
    if (components[this.#last]?.id !== id && components[++this.#last]?.id !== id) {
      this.#places ??= new Map(components.map((component, place) => [component.id, place]));
      this.#last = this.#places.get(id) ?? -1;
    }
    return id && this.#last >= 0 ? this.#last : undefined;
  }

  /** What two quantities make if both have a value. */
  #both(operation: 'sum' | 'product' | 'quotient', a: N | undefined, b: N | undefined): N | undefined {
    return a === undefined || b === undefined ? undefined : this.#arithmetic[operation](a, b);
  }

  #between(p: number | undefined, q: number | undefined): N | undefined {
    const { roots } = this.#graph;
    return p !== undefined && q !== undefined && roots[p] === roots[q]
      ? this.#driven?.between(p, q)
      : undefined;
  }

  /** Whether it lies on a loop, of conductors or through a supply of constant current. */
  #isOnLoop(branch = -1): boolean {
    this.#looped ??= onLoops(this.#graph);
    return this.#looped[branch] === 1;
  }

  /** Whether nothing can flow: it conducts nothing, lies on no loop, or nothing drives its piece round a loop. */
  #isDead(branch: number | undefined): boolean {
    const { roots, tails, supplies } = this.#graph;
    const pieceOf = (at: number | undefined): number | undefined => roots[tails[at ?? -1] ?? -1];
    return (
      !this.#isOnLoop(branch) ||
      !supplies.some((supply) => this.#isOnLoop(supply) && pieceOf(supply) === pieceOf(branch))
    );
  }

  #currentIn(place = -1): N | undefined {
    return place < 0 ? undefined : this.#driven?.current(place);
  }

  #voltageOf(place = -1): N | undefined {
    const { emfs, amperes, tails, heads } = this.#graph;
    const [tail, head] = [tails[place], heads[place]];
    return emfs[place] || amperes[place] ? this.#between(head, tail) : this.#between(tail, head);
  }

  #powerOf(place = -1): N | undefined {
    const { resistances, amperes } = this.#graph;
    const current = this.#currentIn(place);
    return resistances[place] || amperes[place]?.n
      ? this.#both('product', this.#voltageOf(place), current)
      : current;
  }

  /** As it is marked, whatever is secretly wrong with it. */
  #resistanceOf(place = -1): N | undefined {
    const part = this.#graph.components[place];
    const marked = part?.fault
      ? resistanceOf(part, this.#circuit.surroundings)
      : this.#graph.resistances[place];
    return marked && this.#arithmetic.of(marked);
  }

  /** What a letter stands for before the id of a component. */
  #valueOf(letter: string, place: number): N | undefined {
    const { components, emfs, resistances } = this.#graph;
    const { of } = this.#arithmetic;
    switch (letter) {
      case 'I':
        return this.#currentIn(place);
      case 'V':
        return this.#voltageOf(place);
      case 'P':
        return this.#powerOf(place);
      case 'E': {
        const part = components[place];
        return part?.kind === 'supply' ? of(part.emf.value) : undefined;
      }
      case 'Pemf': {
        const emf = emfs[place];
        return this.#both('product', emf && of(emf), this.#currentIn(place));
      }
      case 'Pr': {
        const [ohms, current] = [resistances[place], this.#currentIn(place)];
        return ohms ? this.#both('product', this.#both('product', of(ohms), current), current) : current;
      }
      default:
        return this.#resistanceOf(place);
    }
  }

  /** What a name stands for, as a list of its value; undefined if there is no such quantity. */
  #read(name: string): [N | undefined] | undefined {
    const [letter, id] = split(name);
    const { nodes, supplies, components } = this.#graph;
    const place = this.#place(id) ?? -1;
    const component = components[place];
    if (component && lettersOf(component).includes(letter)) return [this.#valueOf(letter, place)];
    const track = /^[RV]$/.test(letter) && trackParts(this.#circuit.components, id);
    if (track) {
      const [from, to] = endsOfTrack(track);
      if (letter === 'V') return [this.#between(nodes.get(from), nodes.get(to))];
      const [one, other] = track.map((part) => this.#resistanceOf(this.#place(part.id)));
      return [this.#both('sum', one, other)];
    }
    switch (name) {
      case 'I_total':
        return [this.totalCurrent()];
      case 'R_total':
        return [this.totalResistance()];
      case 'R_loop':
        if (this.#main !== undefined && this.#graph.amperes[this.#main]) return undefined;
        return [this.#driven && this.#both('sum', this.totalResistance(), this.#resistanceOf(this.#main))];
      case 'P_total':
      case 'P_dissipated':
        return [
          supplies.reduce<N | undefined>(
            (power, supply) =>
              this.#both('sum', power, this.#valueOf(this.#graph.emfs[supply] ? 'Pemf' : 'P', supply)),
            this.#driven && this.#arithmetic.zero,
          ),
        ];
    }
    // A junction may have an underline in its name.
    for (let cut = id.indexOf('_'); letter === 'V' && cut > 0; cut = id.indexOf('_', cut + 1)) {
      const [p, q] = [id.slice(0, cut), id.slice(cut + 1)].map((end) =>
        isNamed(end) ? nodes.get(end) : undefined,
      );
      if (p !== undefined && q !== undefined) return [this.#between(p, q)];
    }
    return undefined;
  }
}
