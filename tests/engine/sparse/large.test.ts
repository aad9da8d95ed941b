import assert from 'node:assert/strict';
import { before, describe, it } from 'node:test';
import { equipLarge, solve, track, type Solution } from '../../../src/engine/solve/index.ts';
import { sparseFlow } from '../../../src/engine/sparse/index.ts';
import { grid, ladder, network } from './circuits.ts';
import { leftOver } from './left-over.ts';

const near = (a: number, b: number, within: number): void => {
  assert.ok(Math.abs(a - b) <= within * Math.abs(b), `${a} is not ${b}`);
};
const total = (solution: Solution): number => solution.totalResistance() ?? NaN;

const spread = (at: number): number => [1, 4.7, 33, 560, 8200][(at * 7) % 5] ?? 1;

describe('before the solver for large circuits is there', () => {
  it('more loops than a page can wait for are a fault', () => {
    const fan = network(
      Array.from({ length: 1100 }, () => [0, 1, 2] as const),
      1,
    );
    assert.deepEqual(
      solve(fan).faults.map(({ code }) => code),
      ['too many loops'],
    );
  });
});

describe('large circuits', () => {
  before(() => {
    equipLarge(sparseFlow);
  });

  it('1,100 resistors side by side: the one has 1,100 times the current', () => {
    const fan = network(
      Array.from({ length: 1100 }, () => [0, 1, 2] as const),
      1,
    );
    const solution = solve(fan);
    near(solution.current('B1') ?? 0, 3300, 1e-14);
    near(Math.abs(solution.current('R700') ?? 0), 3, 1e-14);
  });

  it('10,000 in a row have as many ohms, and one current', () => {
    const row = network(
      Array.from({ length: 10_000 }, (_, at) => [at + 1, at, 2] as const),
      10_000,
    );
    const solution = solve(row);
    near(total(solution), 20_000, 1e-12);
    assert.equal(solution.current('R1'), solution.current('R10000'));
  });

  it('a long ladder of 1 Ω has the golden ratio of resistance (the limit of a ladder: R. P. Feynman, Lectures on Physics II, section 22-6, from memory)', () => {
    near(total(solve(ladder(2000))), (1 + Math.sqrt(5)) / 2, 1e-13);
  });

  it('between opposite corners of squares of 1 Ω: 1, 3/2, 13/7 and 47/22 Ω (a well-known series, from memory)', () => {
    [1, 3 / 2, 13 / 7, 47 / 22].forEach((ohms, at) => near(total(solve(grid(at + 2))), ohms, 1e-14));
  });

  it('between neighbours in the middle of a large square of 1 Ω there is half an ohm (the infinite grid, common practice)', () => {
    const side = 61;
    const middle = (side * side - 1) / 2;
    const { components } = grid(side);
    const rest = components.filter(({ id }) => id !== 'B1');
    const supply = components.find(({ id }) => id === 'B1');
    assert.ok(supply);
    const circuit = { components: [{ ...supply, from: `n${middle}`, to: `n${middle + 1}` }, ...rest] };
    near(total(solve(circuit)), 0.5, 1e-3);
  });

  for (const [name, circuit] of [
    ['a ladder of 3,000 sections', ladder(3000, spread)],
    ['a square of 40 by 40', grid(40, spread)],
    ['a square of 60 by 60, ohms from 1e-6 to 1e9', grid(60, (at) => 10 ** (((at * 11) % 16) - 6))],
  ] as const)
    it(`${name}: as much flows in at each node as out, and the powers balance`, () => {
      const solution = solve(circuit);
      assert.equal(solution.status, 'solved');
      const left = leftOver(circuit, (at) => solution.current(circuit.components[at]?.id ?? '') ?? NaN);
      assert.ok(left <= 1e-14, `${left}`);
      const taken = circuit.components.reduce(
        (sum, { id, kind }) => sum + (kind === 'supply' ? 0 : (solution.power(id) ?? NaN)),
        0,
      );
      near(taken, 6 * (solution.current('B1') ?? 0), 1e-9);
    });

  it('is followed by a slider between its two ends', () => {
    const circuit = grid(30, spread);
    const out = new Float64Array(2);
    assert.ok(track(circuit, 'R400', ['I_R400', 'I_B1']).at(5, out));
    const set = {
      ...circuit,
      components: grid(30, (at) => (at === 399 ? 5 : spread(at))).components,
    };
    const now = solve(set);
    near(out[0] ?? 0, now.current('R400') ?? 0, 1e-10);
    near(out[1] ?? 0, now.current('B1') ?? 0, 1e-12);
  });
});
