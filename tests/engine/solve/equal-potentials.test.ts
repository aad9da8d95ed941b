import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { circuit, plainParts, positive, type Part } from './random-circuit.ts';
import { exact, nodesOf, part } from './resistor-network.ts';

const numRuns = 1000;

/** A network with two dividers between two of its nodes, tapped at x and at y: k times as much in the second as in the first, or `off` more in one arm. */
const bridged = fc
  .record({ list: plainParts, draw: fc.nat(), r1: positive, r2: positive, k: positive, off: positive })
  .map(({ list, draw, r1, r2, k, off }) => {
    const nodes = nodesOf(list);
    const from = nodes[draw % nodes.length] ?? '';
    const to = nodes[(draw + 1) % nodes.length] ?? '';
    const [first, second, times] = [new Fraction(r1), new Fraction(r2), new Fraction(k)];
    const arms = (more: Fraction | number): Part[] => [
      part('R91', from, 'x', first),
      part('R92', 'x', to, second),
      part('R93', from, 'y', first.mul(times).add(more)),
      part('R94', 'y', to, second.mul(times)),
    ];
    return { from, to, balanced: [...list, ...arms(0)], unbalanced: [...list, ...arms(new Fraction(off))] };
  });

const joints: fc.Arbitrary<Part> = fc.oneof(
  positive.map((ohms) => part('R99', 'x', 'y', ohms)),
  fc.constantFrom('wire', 'ammeter').map((kind) => ({ id: 'R99', kind, from: 'x', to: 'y' })),
);

describe('nodes at one potential', () => {
  it('of a bridge in balance, anywhere: whatever joins them carries nothing and changes nothing', () => {
    fc.assert(
      fc.property(bridged, joints, ({ balanced }, joint) => {
        const [before, after] = [balanced, [...balanced, joint]].map((list) => solveExact(circuit(list)));
        assert.ok(after?.current('R99')?.equals(0), joint.kind);
        for (const { id } of balanced)
          assert.ok(exact(after?.current(id)).equals(exact(before?.current(id))), `${joint.kind} at ${id}`);
      }),
      { numRuns },
    );
  });

  it('of a bridge out of balance there are none: what joins its middles carries something just where there is a p.d. to divide', () => {
    fc.assert(
      fc.property(bridged, positive, ({ from, to, unbalanced }, ohms) => {
        const after = solveExact(circuit([...unbalanced, part('R99', 'x', 'y', ohms)]));
        const driving = exact(after.quantity(`V_${from}_${to}`));
        assert.equal(exact(after.current('R99')).n === 0n, driving.n === 0n);
      }),
      { numRuns },
    );
  });

  it('wherever they are found: joining them, or opening a branch that carries nothing, changes no current elsewhere', () => {
    let joined = 0;
    let cut = 0;
    fc.assert(
      fc.property(plainParts, (list) => {
        const before = solveExact(circuit(list));
        const same = (changed: readonly Part[], but: string): void => {
          const after = solveExact(circuit(changed));
          for (const { id } of list)
            if (id !== but) assert.ok(exact(after.current(id)).equals(exact(before.current(id))), id);
        };
        const [p = '', ...others] = nodesOf(list);
        const level = others.find((q) => before.potential(q)?.equals(exact(before.potential(p))));
        if (level) {
          same([...list, { id: 'W99', kind: 'wire', from: p, to: level }], '');
          joined += 1;
        }
        const idle = list.find(({ id, kind }) => kind === 'resistor' && before.current(id)?.equals(0));
        if (idle) {
          const { id, from, to } = idle;
          same(
            list.map((each) => (each === idle ? { id, kind: 'switch', from, to, closed: false } : each)),
            id,
          );
          cut += 1;
        }
      }),
      { numRuns },
    );
    assert.ok(joined > 50 && cut > 200, `${joined} joined, ${cut} cut`);
  });
});
