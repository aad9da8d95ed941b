import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { quantities, solve, solveExact } from '../../../src/engine/solve/index.ts';
import { disagreement, read } from './agreement.ts';
import { circuitOf, titlesOf, workedExamples } from './reference.ts';

describe('worked examples of textbooks', () => {
  it('are all here', () => {
    assert.equal(workedExamples.length, 79);
  });

  for (const example of workedExamples) {
    const circuit = circuitOf(example);

    it(`${titlesOf(example)} (${example.id}): exact answers to the last digit`, () => {
      const solution = solveExact(circuit);
      for (const { quantity, exact } of example.asked)
        assert.equal(read(solution, quantity).toFraction(), exact, quantity);
    });

    it(`${titlesOf(example)} (${example.id}): live readings within 1e-15 of the largest`, () => {
      assert.ok(disagreement(circuit, quantities(circuit)) <= 1e-15);
    });

    it(`${titlesOf(example)} (${example.id}): the figures printed, where the book made no slip`, () => {
      const solution = solve(circuit);
      for (const { quantity, published, value, agrees } of example.asked) {
        if (!agrees) continue;
        const number = /-?\d+(\.\d+)?/.exec(published.replace(',', '.'))?.[0] ?? '';
        const lastPlace = 10 ** -(number.split('.')[1]?.length ?? 0);
        const half = Math.abs((value / Number(number)) * (lastPlace / 2)) || lastPlace / 2;
        assert.ok(
          Math.abs(read(solution, quantity) - value) <= half * (1 + 1e-9),
          `${quantity} is ${published}`,
        );
      }
    });
  }
});
