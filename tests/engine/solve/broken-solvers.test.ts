import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { resistanceOf, type Circuit, type Component } from '../../../src/engine/circuit/index.ts';
import { solve, type Solution } from '../../../src/engine/solve/index.ts';
import { circuit as made, parts, positive, realSupply, resistor } from './random-circuit.ts';

type Solver = (circuit: Circuit) => Solution;
type Law = (circuit: Circuit, solution: Solution) => boolean;

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

const changed = (circuit: Circuit, change: (component: Component) => Component): Circuit => ({
  ...circuit,
  components: circuit.components.map(change),
});

/** A solution with one reading in the place of another. */
function misread(
  solution: Solution,
  letter: 'current' | 'voltage',
  change: (id: string, value: number) => number,
): Solution {
  const read = (id: string): number | undefined => {
    const value = solution[letter](id);
    return value === undefined ? undefined : change(id, value);
  };
  return new Proxy(solution, {
    get: (target, name) => {
      if (name === letter) return read;
      const value: unknown = Reflect.get(target, name, target);
      return typeof value === 'function' ? (value.bind(target) as unknown) : value;
    },
  });
}

/** Solvers with one mistake each, such as were made on the way. */
const broken: Readonly<Record<string, Solver>> = {
  'that loses the sign of a current': (circuit) =>
    misread(solve(circuit), 'current', (id, value) => (id === 'R2' ? -value : value)),
  'that forgets what is inside a supply': (circuit) =>
    solve(
      changed(circuit, (each) => {
        if (each.kind !== 'supply') return each;
        const { internalResistance, ...ideal } = each;
        return internalResistance ? ideal : each;
      }),
    ),
  'that takes an ideal ammeter for a nano-ohm': (circuit) =>
    misread(solve(circuit), 'voltage', (id, value) =>
      id.startsWith('A') ? (solve(circuit).current(id) ?? 0) * 1e-9 : value,
    ),
  'that forgets a branch at a junction': (circuit) =>
    misread(solve(circuit), 'current', (id, value) => (id === circuit.components.at(-1)?.id ? 0 : value)),
  'that rounds on the way': (circuit) =>
    misread(solve(circuit), 'current', (_, value) => Number(value.toPrecision(6))),
  'that swaps the leads of a meter': (circuit) =>
    misread(solve(circuit), 'voltage', (id, value) => (id.startsWith('V') ? -value : value)),
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

/** The laws that a solver breaks in a thousand circuits. */
function broke(solver: Solver): Set<string> {
  const found = new Set<string>();
  for (const circuit of fc.sample(circuits, 1000)) {
    if (solve(circuit).status === 'faulty') continue;
    const solution = solver(circuit);
    for (const [name, law] of Object.entries(laws)) if (!law(circuit, solution)) found.add(name);
  }
  return found;
}

describe('the laws', () => {
  it('hold for our solver', () => {
    assert.deepEqual([...broke(solve)], []);
  });

  for (const [name, solver] of Object.entries(broken)) {
    it(`find a solver ${name}`, () => {
      assert.ok(broke(solver).size > 0);
    });
  }
});
