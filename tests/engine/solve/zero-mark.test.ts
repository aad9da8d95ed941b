import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { circuitFrom, circuitToJSON, CircuitFormatError } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { describeCircuit } from '../../../src/engine/schematic/index.ts';
import { quantities, solve, solveExact } from '../../../src/engine/solve/index.ts';
import { anyCircuit, numRuns } from './random-circuit.ts';

describe('the 0 V mark', () => {
  it('is where the potential is 0, and moves every other by as much; nothing else changes', () => {
    fc.assert(
      fc.property(anyCircuit, fc.nat(), (circuit, pick) => {
        const nodes = [...new Set(circuit.components.flatMap(({ from, to }) => [from, to]))];
        const zero = nodes[pick % nodes.length] ?? '';
        const [plain, marked] = [solveExact(circuit), solveExact({ ...circuit, zero })];
        assert.equal(marked.status, plain.status);
        for (const name of quantities(circuit))
          assert.equal(marked.quantity(name)?.toFraction(), plain.quantity(name)?.toFraction(), name);
        if (plain.status === 'faulty') return;
        assert.equal(marked.potential(zero)?.toFraction(), '0');
        const away = plain.potential(zero);
        if (!away) return;
        for (const node of nodes) {
          assert.equal(marked.potential(node)?.toFraction(), plain.potential(node)?.sub(away).toFraction());
          assert.equal(
            marked.potential(node)?.toFraction(),
            marked.quantity(`V_${node}_${zero}`)?.toFraction(),
          );
        }
      }),
      { numRuns: numRuns / 4 },
    );
  });

  it('splits a battery’s p.d. into what is above 0 V and what is below (common practice)', () => {
    const circuit = parseCircuit('B1 9 V + R1 4 Ω + @q + R2 5 Ω; 0 V @q');
    const [supply] = circuit.components;
    assert.equal(solve(circuit).potential(supply?.from ?? ''), 4);
    assert.equal(solve(circuit).potential(supply?.to ?? ''), -5);
    assert.match(describeCircuit(circuit), /The 0 V mark is where R1 and R2 meet\.$/);
  });

  it('goes through JSON, and is refused where nothing is joined', () => {
    const circuit = parseCircuit('B1 9 V + R1 4 Ω + @q + R2 5 Ω; 0 V @q');
    const json = circuitToJSON(circuit);
    assert.equal(json.zero, 'q');
    assert.equal(circuitFrom(json).zero, 'q');
    const wrong = { ...json, zero: 'p' };
    assert.throws(
      () => circuitFrom(wrong),
      (error) =>
        error instanceof CircuitFormatError && error.path === 'zero' && error.code === 'zero unknown',
    );
    assert.throws(() => circuitFrom({ ...json, zero: 5 }), CircuitFormatError);
  });
});
