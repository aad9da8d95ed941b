import assert from 'node:assert/strict';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { solve, solveExact, type Readings } from '../../../src/engine/solve/index.ts';
import type { Fraction } from '../../../src/engine/quantity/index.ts';

/** A reading that must be there. */
export function read<N extends number | Fraction>(readings: Readings<N>, name: string): N {
  const value = readings.quantity(name);
  assert.ok(value !== undefined, `${name}: ${JSON.stringify(readings.reason(name) ?? readings.faults)}`);
  return value;
}

/**
 * How far live readings are from exact ones, relative to the largest exact reading with the same letter: to the largest current, the
 * largest p.d., and so on.
 */
export function disagreement(circuit: Circuit, names: readonly string[]): number {
  const [live, exact] = [solve(circuit), solveExact(circuit)];
  const largest = new Map<string, number>();
  const letterOf = (name: string): string => name.slice(0, 1);
  for (const name of names) {
    const size = Math.abs(Number(exact.quantity(name) ?? 0));
    largest.set(letterOf(name), Math.max(size, largest.get(letterOf(name)) ?? 0));
  }
  return Math.max(
    0,
    ...names.map((name) => {
      const [value, truth] = [live.quantity(name), exact.quantity(name)];
      assert.equal(value === undefined, truth === undefined, `${name} has a value live as exactly`);
      if (value === undefined || truth === undefined) return 0;
      assert.ok(Number.isFinite(value), `${name} is a number`);
      const error = Math.abs(value - Number(truth));
      return error === 0 ? 0 : error / (largest.get(letterOf(name)) ?? 0);
    }),
  );
}
