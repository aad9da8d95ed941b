import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { explain } from '../../../src/engine/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { withFaults } from '../circuit/with-faults.ts';
import { driven, told } from './random-circuit.ts';
import { web } from './random-web.ts';

const quay = parseCircuit('B1 6 V + A1 + (L1 8 Ω ∥ (A2 + L2 8 Ω secretly broken))');

describe('a derivation in a circuit with something secretly wrong', () => {
  it('goes by currents, p.d.s and powers that are read', () => {
    const { answer, steps } = explain(quay, { find: 'I_L1', given: { I_A1: '0.75', I_A2: 0 } });
    assert.equal(answer?.value.toFraction(), '3/4');
    assert.deepEqual(
      steps.map(({ rule }) => rule).filter((rule) => rule !== 'same current'),
      ['currents add'],
    );
    assert.equal(explain(quay, { find: 'P_L1', given: { I_L1: '0.75', V_L1: 6 } }).status, 'found');
  });

  it('does not go by what is marked, and names no component', () => {
    for (const question of [{ find: 'I_L2' }, { find: 'I_L2', given: { V_L2: 6, R_L2: 8 } }]) {
      const { status, reason, steps } = explain(quay, question);
      assert.deepEqual([status, reason, steps], ['not enough', { code: 'not as marked', data: {} }, []]);
    }
    const pd = { find: 'V_L1', given: { V_B1: 6 } };
    assert.equal(explain(quay, pd).status, 'found');
    // A switch that is drawn closed may have a p.d.
    const stuck = parseCircuit('B1 6 V + S1 closed secretly broken + L1 8 Ω');
    assert.equal(explain(stuck, pd).reason?.code, 'not as marked');
  });

  it('ends where the readings are, and calls no readings contradictory, whatever the circuit', () => {
    let found = 0;
    const circuits = withFaults(fc.oneof(driven, web));
    const picks = fc.array(fc.nat(), { minLength: 2, maxLength: 8 });
    fc.assert(
      fc.property(circuits, fc.nat(), picks, (circuit, pick, given) => {
        const all = [...told(circuit)].filter(([name]) => /^[IVP]_/.test(name));
        fc.pre(all.length > 0);
        const [find = ''] = all[pick % all.length] ?? [];
        const readings = given.flatMap((one) => {
          const [name = '', value = ''] = all[one % all.length] ?? [];
          return name === find ? [] : [[name, value] as const];
        });
        const derivation = explain(circuit, { find, given: Object.fromEntries(readings) });
        assert.notEqual(derivation.status, 'contradiction');
        if (!derivation.answer) return;
        found += 1;
        const { value } = derivation.answer;
        assert.equal(value.toFraction(), solveExact(circuit).quantity(find)?.toFraction(), find);
      }),
      { numRuns: 1000 },
    );
    assert.ok(found > 100, `${found} found`);
  });
});
