import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { quantities, solve, solveExact, track } from '../../../src/engine/solve/index.ts';
import {
  anyCircuit,
  circuit,
  parts,
  realSupply,
  resistor,
  spread,
  spreadCircuit,
  type Part,
} from './random-circuit.ts';

const runs = { numRuns: 50 };

/** Circuits small enough to be solved in whole numbers, too wide for that, and with more branches than the lists begin with. */
const mixed: fc.Arbitrary<Circuit[]> = fc.array(
  fc.oneof(
    anyCircuit,
    spreadCircuit,
    fc.array(parts(realSupply(spread), resistor(spread)), { minLength: 9, maxLength: 9 }).map((many) =>
      circuit(
        many.flatMap((list, copy) => {
          const own = (node: string): string => (node === 'a' ? node : `${node}${copy}`);
          return list.map(({ id, from, to, ...part }): Part => ({
            ...part,
            id: id.replace(/\d+/, (number) => String(Number(number) + 20 * copy)),
            from: own(from),
            to: own(to),
          }));
        }),
      ),
    ),
  ),
  { minLength: 2, maxLength: 5 },
);

const readings = (of: ReturnType<typeof solve>, names: readonly string[]): (number | undefined)[] =>
  names.map((name) => of.quantity(name));

describe('solutions that are kept', () => {
  it('read the same whatever is solved before they are read, and after', () => {
    fc.assert(
      fc.property(mixed, (circuits) => {
        const alone = circuits.map((each) => readings(solve(each), quantities(each)));
        const solutions = circuits.map((each) => solve(each));
        circuits.toReversed().forEach((each) => solveExact(each));
        for (const place of [...circuits.keys(), ...circuits.keys()]) {
          const [each, solution] = [circuits[place], solutions[place]];
          assert.ok(each && solution);
          assert.deepEqual(readings(solution, quantities(each)), alone[place]);
        }
      }),
      runs,
    );
  });

  it('follow their sliders side by side', () => {
    fc.assert(
      fc.property(mixed, fc.integer({ min: 1, max: 90 }), (circuits, ohms) => {
        const sliders = circuits.flatMap((each) => {
          const id = each.components.find(({ kind }) => kind === 'resistor')?.id;
          return id === undefined ? [] : [{ each, id, names: quantities(each) }];
        });
        const follow = (tracker: ReturnType<typeof track>, count: number, at: number): Float64Array => {
          const out = new Float64Array(count);
          tracker.at(at, out);
          return out;
        };
        const alone = sliders.map(({ each, id, names }) =>
          follow(track(each, id, names), names.length, ohms),
        );
        const trackers = sliders.map(({ each, id, names }) => track(each, id, names));
        trackers.forEach((tracker, k) => follow(tracker, sliders[k]?.names.length ?? 0, 2 * ohms));
        trackers.forEach((tracker, k) =>
          assert.deepEqual(follow(tracker, sliders[k]?.names.length ?? 0, ohms), alone[k]),
        );
      }),
      runs,
    );
  });
});
