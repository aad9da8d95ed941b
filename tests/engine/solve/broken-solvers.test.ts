import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { resistanceOf, type Circuit, type Component } from '../../../src/engine/circuit/index.ts';
import { solve } from '../../../src/engine/solve/index.ts';
import { circuit as made, parts, positive, realSupply, resistor } from './random-circuit.ts';

interface Solved {
  readonly potential: (node: string) => number | undefined;
  readonly current: (id: string) => number | undefined;
  readonly voltage: (id: string) => number | undefined;
  readonly power: (id: string) => number | undefined;
}
type Solver = (circuit: Circuit) => Solved;
type Law = (circuit: Circuit, solution: Solved) => boolean;

const near = (a: number, b: number, size: number): boolean => Math.abs(a - b) <= 1e-12 * Math.max(1, size);

/** What holds in every circuit: each law by itself, so that it is known which one finds a fault. */
const laws: Readonly<Record<string, Law>> = {
  'Kirchhoff’s current law': ({ components }, solution) => {
    const sums = new Map<string, number>();
    let largest = 0;
    for (const { id, kind, from, to } of components) {
      const current = (solution.current(id) ?? 0) * (kind === 'supply' ? -1 : 1);
      largest = Math.max(largest, Math.abs(current));
      sums.set(from, (sums.get(from) ?? 0) + current);
      sums.set(to, (sums.get(to) ?? 0) - current);
    }
    return [...sums.values()].every((sum) => near(sum, 0, largest));
  },
  'a p.d. is a difference of potentials': ({ components }, solution) =>
    components.every(({ id, from, to }) => {
      const [p, q] = [solution.potential(from), solution.potential(to)];
      const volts = solution.voltage(id);
      return (
        p === undefined ||
        q === undefined ||
        volts === undefined ||
        near(volts, p - q, Math.abs(p) + Math.abs(q))
      );
    }),
  'V = IR, and E − Ir at a supply': ({ components }, solution) =>
    components.every((component) => {
      const [volts, current] = [solution.voltage(component.id), solution.current(component.id) ?? 0];
      const ohms = Number(resistanceOf(component) ?? NaN);
      if (volts === undefined || Number.isNaN(ohms)) return true;
      const emf = component.kind === 'supply' ? Number(component.emf.value) : undefined;
      return near(
        volts,
        emf === undefined ? current * ohms : emf - current * ohms,
        Math.abs(current * ohms) + Math.abs(emf ?? 0),
      );
    }),
  'what the supplies deliver is what the others take': ({ components }, solution) => {
    const powers = components.map(({ id, kind }) => (solution.power(id) ?? 0) * (kind === 'supply' ? 1 : -1));
    return near(
      powers.reduce((a, b) => a + b, 0),
      0,
      Math.max(...powers.map(Math.abs)),
    );
  },
};

/** The steps of a solver that a mistake may change. */
interface Steps {
  /** The ohms of a component that conducts, `ideal` where it has none. */
  readonly ohms: (component: Component, ideal: number) => number;
  /** The volts that a component adds in the direction from `from` to `to`. */
  readonly volts: (component: Component) => number;
  /** What a branch's current counts at the node that it enters. */
  readonly enters: (component: Component) => number;
  /** What the potential of that node counts in the branch's own law. */
  readonly meets: number;
  /** The siemens between every node and the first. */
  readonly leak: number;
  /** A number on the way. */
  readonly carried: (value: number) => number;
  /** The row that is taken out next, from this one on. */
  readonly pivot: (rows: readonly (readonly number[])[], from: number) => number;
}

const largest = (rows: readonly (readonly number[])[], from: number): number =>
  rows.reduce((best, row, at) => {
    const isBetter = at >= from && Math.abs(row[from] ?? 0) > Math.abs(rows[best]?.[from] ?? 0);
    return isBetter ? at : best;
  }, from);

const right: Steps = {
  ohms: (component, ideal) => Number(resistanceOf(component) ?? ideal),
  volts: (component) => (component.kind === 'supply' ? Number(component.emf.value) : 0),
  enters: () => -1,
  meets: -1,
  leak: 0,
  carried: (value) => value,
  pivot: largest,
};

/** Gauss’s elimination with row exchanges. */
function eliminated(rows: number[][], { carried, pivot }: Steps): number[] {
  for (const from of rows.keys()) {
    const at = pivot(rows, from);
    const [here, there] = [rows[from], rows[at]];
    if (!here || !there) break;
    [rows[from], rows[at]] = [there, here];
    for (const [place, row] of rows.entries()) {
      if (place === from) continue;
      const factor = (row[from] ?? 0) / (there[from] ?? 0);
      if (factor !== 0) rows[place] = row.map((value, k) => carried(value - factor * (there[k] ?? 0)));
    }
  }
  return rows.map((row, place) => (row.at(-1) ?? 0) / (row[place] ?? 0));
}

/**
 * Another way to solve a circuit: the potentials of all nodes and the currents of all branches at once (the modified nodal
 * analysis of C.-W. Ho, A. E. Ruehli and P. A. Brennan 1975), with steps that may be mistaken.
 */
const nodal =
  (mistaken: Partial<Steps> = {}): Solver =>
  ({ components }) => {
    const steps = { ...right, ...mistaken };
    const branches = components.filter((each) => resistanceOf(each) !== undefined);
    const nodes = [...new Set(branches.flatMap(({ from, to }) => [from, to]))].slice(1);
    const size = nodes.length + branches.length;
    const row = (): number[] => new Array<number>(size + 1).fill(0);
    const add = (to: number[], place: number, value: number): void => {
      if (place >= 0) to[place] = (to[place] ?? 0) + value;
    };
    const balance = nodes.map((_, place) => {
      const sum = row();
      add(sum, place, steps.leak);
      return sum;
    });
    const laws = branches.map((branch, place) => {
      const law = row();
      const [p, q] = [nodes.indexOf(branch.from), nodes.indexOf(branch.to)];
      const sign = branch.kind === 'supply' ? -1 : 1;
      add(law, p, 1);
      add(law, q, steps.meets);
      add(law, nodes.length + place, -sign * steps.ohms(branch, 0));
      add(law, size, steps.volts(branch));
      const [leaves, enters] = [balance[p], balance[q]];
      if (leaves) add(leaves, nodes.length + place, sign);
      if (enters) add(enters, nodes.length + place, sign * steps.enters(branch));
      return law;
    });
    const found = eliminated([...balance, ...laws], steps);
    const potential = (node: string): number => found[nodes.indexOf(node)] ?? 0;
    const current = (id: string): number => {
      const place = branches.findIndex((each) => each.id === id);
      return place < 0 ? 0 : (found[nodes.length + place] ?? NaN);
    };
    const voltage = (id: string): number | undefined => {
      const component = components.find((each) => each.id === id);
      return component && potential(component.from) - potential(component.to);
    };
    return { potential, current, voltage, power: (id) => (voltage(id) ?? 0) * current(id) };
  };

/** Solvers with one mistake each in their steps. */
const broken: Readonly<Record<string, Solver>> = {
  'that gives an ideal ammeter a nano-ohm': nodal({
    ohms: (each, ideal) => (each.kind === 'ammeter' ? 1e-9 : right.ohms(each, ideal)),
  }),
  'that forgets what is inside a supply': nodal({
    ohms: (each, ideal) => (each.kind === 'supply' ? 0 : right.ohms(each, ideal)),
  }),
  'that takes every supply to drive the other way': nodal({ volts: (each) => -right.volts(each) }),
  'that forgets a branch at a junction': nodal({ enters: ({ id }) => (id === 'R2' ? 0 : -1) }),
  'that rounds on the way': nodal({ carried: (value) => Number(value.toPrecision(7)) }),
  'that does not exchange rows': nodal({ pivot: (_, from) => from }),
  'that misreads one resistance by 1 %': nodal({
    ohms: (each, ideal) => right.ohms(each, ideal) * (each.id === 'R2' ? 1.01 : 1),
  }),
  'that takes every resistance for 1 % less': nodal({
    ohms: (each, ideal) => right.ohms(each, ideal) * 0.99,
  }),
  'that puts a milliohm into everything': nodal({ ohms: (each, ideal) => right.ohms(each, ideal) + 1e-3 }),
  'that lets a microsiemens leak from every node': nodal({ leak: 1e-6 }),
  'whose equations are not symmetric': nodal({ meets: -1.001 }),
  'that loses the sign of an e.m.f.': nodal({ volts: (each) => Math.abs(right.volts(each)) }),
};

const meters = fc.constantFrom(
  { kind: 'ammeter' },
  { kind: 'voltmeter' },
  { kind: 'voltmeter', resistance: '1000' },
);
const circuits = parts(
  realSupply(),
  fc.oneof({ weight: 4, arbitrary: resistor(positive) }, { weight: 2, arbitrary: meters }),
).map((list) => made(list));

/** Circuits in one piece, with no two ideal ammeters that could share a current in any way. */
const plain = circuits.filter((circuit) => {
  const ammeters = circuit.components.filter(({ kind }) => kind === 'ammeter');
  const solution = solve(circuit);
  return (
    ammeters.length < 2 &&
    ammeters.every(({ from, to }) => from !== to) &&
    circuit.components.every(({ from, to }) =>
      [from, to].every((node) => solution.potential(node) !== undefined),
    )
  );
});

/** The laws that a solver breaks in a thousand circuits. */
function broke(solver: Solver, among: fc.Arbitrary<Circuit>): Set<string> {
  const found = new Set<string>();
  for (const circuit of fc.sample(among, 1000)) {
    if (solve(circuit).status === 'faulty') continue;
    const solution = solver(circuit);
    for (const [name, law] of Object.entries(laws)) if (!law(circuit, solution)) found.add(name);
  }
  return found;
}

describe('the laws', () => {
  const finding = new Set<string>();

  it('hold for our solver', () => {
    assert.deepEqual([...broke(solve, circuits)], []);
  });

  it('hold for the other solver while it makes no mistake', () => {
    assert.deepEqual([...broke(nodal(), plain)], []);
  });

  for (const [name, solver] of Object.entries(broken)) {
    it(`find a solver ${name}`, () => {
      const found = broke(solver, plain);
      assert.ok(found.size > 0);
      for (const law of found) finding.add(law);
    });
  }

  it('each find one of them at least', () => {
    assert.deepEqual([...finding].sort(), Object.keys(laws).sort());
  });
});
