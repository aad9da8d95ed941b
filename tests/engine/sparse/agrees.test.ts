import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { bridges } from '../../../src/engine/circuit/index.ts';
import { graphOf, type Graph } from '../../../src/engine/solve/graph.ts';
import { faultsOf } from '../../../src/engine/solve/faults.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { sparseFlow } from '../../../src/engine/sparse/index.ts';
import { spreadCircuit, anyCircuit } from '../solve/random-circuit.ts';

/**
 * What the rounding of e.m.f.s against each other may drive, in amperes: where several meet, what is left of them is known to the last bit
 * of the largest, and that drives a current through the smallest resistance. Of one alone nothing is left.
 */
function ofRounding({ emfs, resistances, supplies }: Graph): number {
  if (supplies.length < 2) return 0;
  const most = emfs.reduce((sum, emf) => sum + Math.abs(Number(emf ?? 0)), 0);
  const least = Math.min(...resistances.map(Number).filter((ohms) => ohms > 0));
  return (2 * Number.EPSILON * most) / least;
}

describe('the solver for large circuits', () => {
  it('finds in small ones what the exact solver finds: every current and every p.d.', () => {
    let compared = 0;
    fc.assert(
      fc.property(fc.oneof(anyCircuit, spreadCircuit), (circuit) => {
        const graph = graphOf(bridges(circuit));
        if (circuit.terminals || faultsOf(graph).length > 0 || graph.supplies.length === 0) return;
        compared += 1;
        const [flow, exact] = [sparseFlow(graph), solveExact(circuit)];
        const currents = circuit.components.map(({ id }) => Math.abs(Number(exact.current(id) ?? 0)));
        const largest = Math.max(...currents);
        circuit.components.forEach(({ id, kind }) => {
          const branch = graph.components.findIndex((one) => one.id === id);
          const truth = exact.current(id);
          if (truth === undefined) return;
          const off = Math.abs(flow.current(branch) - Number(truth));
          assert.ok(
            off <= 1e-12 * largest + ofRounding(graph),
            `${kind} ${id}: ${flow.current(branch)} is not ${Number(truth)}`,
          );
        });
      }),
      { numRuns: 2000 },
    );
    assert.ok(compared > 1000, `only ${compared} were compared`);
  });
});
