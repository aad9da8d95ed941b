import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { solve, solveExact, track } from '../../../src/engine/solve/index.ts';
import { disagreement, read } from './agreement.ts';
import { circuit, type Part } from './random-circuit.ts';

const supply: Part = { id: 'B1', kind: 'supply', from: 'n0', to: 'g', emf: '12' };
const resistor = (k: number, from: string, to: string): Part => ({
  id: `R${k}`,
  kind: 'resistor',
  from,
  to,
  resistance: `${100 + ((k * 7919) % 9000)}/10`,
});
const chain = (n: number): Part[] =>
  Array.from({ length: n }, (_, k) => resistor(k + 1, `n${k}`, k === n - 1 ? 'g' : `n${k + 1}`));
const fan = (n: number): Part[] => Array.from({ length: n }, (_, k) => resistor(k + 1, 'n0', 'g'));
const ladder = (n: number): Part[] =>
  Array.from({ length: n }, (_, k) => [
    resistor(2 * k + 1, `n${k}`, `n${k + 1}`),
    resistor(2 * k + 2, `n${k + 1}`, 'g'),
  ]).flat();
const grid = (k: number): Part[] => {
  const name = (i: number, j: number): string =>
    i + j === 0 ? 'n0' : i + j === 2 * k - 2 ? 'g' : `${i},${j}`;
  const places = Array.from({ length: k * k }, (_, at) => [Math.floor(at / k), at % k] as const);
  const ends = places.flatMap(([i, j]) => [
    ...(i < k - 1 ? [[name(i, j), name(i + 1, j)] as const] : []),
    ...(j < k - 1 ? [[name(i, j), name(i, j + 1)] as const] : []),
  ]);
  return ends.map(([from, to], at) => resistor(at + 1, from, to));
};
const currents = (parts: readonly Part[]): string[] => parts.map(({ id }) => `I_${id}`);

describe('large circuits', () => {
  for (const [what, parts] of [
    ['a ladder of 40 resistors', ladder(20)],
    ['a grid of 40 resistors', grid(5)],
    ['a chain of 150', chain(150)],
    ['a fan of 60', fan(60)],
    ['a grid of 112', grid(8)],
  ] as const) {
    it(`${what}: live currents within 1e-15 of the largest`, () => {
      assert.ok(disagreement(circuit([supply, ...parts]), currents(parts)) <= 1e-15);
    });
  }

  it('a chain of 20,000 resistors has one current, without a stack that overflows', () => {
    const parts = chain(20_000);
    const solution = solve(circuit([supply, ...parts]));
    const total = parts.reduce(
      (sum, { resistance }) => sum + Number(String(resistance).split('/')[0]) / 10,
      0,
    );
    assert.ok(Math.abs(read(solution, 'I_R19999') * total - 12) < 1e-9);
    assert.deepEqual(solution.cautions, []);
  });

  it('a fan of 900 resistors obeys the junction law', () => {
    const parts = fan(900);
    const solution = solve(circuit([supply, ...parts]));
    const sum = parts.reduce((total, { id }) => total + read(solution, `I_${id}`), 0);
    assert.ok(Math.abs(sum / read(solution, 'I_B1') - 1) < 1e-13);
  });

  it('one resistor in a fan of 300 is followed though that is too much to solve exactly', () => {
    const whole = circuit([supply, ...fan(300)]);
    const out = new Float64Array(2);
    assert.ok(track(whole, 'R1', ['I_R1', 'I_R2']).at(24, out));
    assert.equal(out[0], 0.5);
    assert.ok(Math.abs((out[1] ?? 0) / read(solve(whole), 'I_R2') - 1) < 1e-15);
  });

  it('what has too many loops says so', () => {
    const exact = solveExact(circuit([supply, ...fan(300)]));
    assert.deepEqual(
      exact.faults.map(({ code, data }) => [code, data]),
      [['too many loops', { count: 299 + 1, limit: 200 }]],
    );
    assert.equal(exact.status, 'faulty');
  });
});
