import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { quantities, solve, solveExact } from '../../../src/engine/solve/index.ts';
import { say } from '../../../src/engine/words/index.ts';
import { anyCircuit, numRuns } from './random-circuit.ts';
import { short } from './short.ts';

const bridge = 'B1 a g 6 1/2; A1 a p; R1 p q 12; V1 p q; S1 q g closed';

/** The reason for a name, as its code and its sentence. */
function reason(circuit: string, name: string): readonly [string, string] | undefined {
  const why = solve(short(circuit)).reason(name);
  return why && [why.code, say(why)];
}

describe('the names of quantities', () => {
  it('are those of each component in order, then the totals, then the p.d.s between named junctions', () => {
    assert.deepEqual(quantities(short('B1 p 0 6; R1 p q 12; S1 q 0 open')), [
      ...['E_B1', 'r_B1', 'I_B1', 'V_B1', 'P_B1', 'Pemf_B1', 'Pr_B1'],
      ...['R_R1', 'I_R1', 'V_R1', 'P_R1', 'R_S1', 'I_S1', 'V_S1', 'P_S1'],
      ...['R_total', 'R_loop', 'I_total', 'P_total', 'P_dissipated', 'V_p_q'],
    ]);
  });

  it('of two supplies hold no total resistance and no total current', () => {
    const names = quantities(short('B1 1 0 6; B2 1 2 3; R1 2 0 12'));
    assert.deepEqual(
      names.filter((name) => /total|loop|dissipated/.test(name)),
      ['P_total', 'P_dissipated'],
    );
  });

  it('of a network without a supply are resistances', () => {
    assert.deepEqual(quantities(short('R1 a b 12; R2 a b 4; ends a b')), ['R_R1', 'R_R2', 'R_total']);
  });

  it('each have a value or a reason, live as exactly, in any circuit', () => {
    fc.assert(
      fc.property(anyCircuit, (circuit) => {
        const [live, exact] = [solve(circuit), solveExact(circuit)];
        for (const name of quantities(circuit)) {
          assert.deepEqual(live.reason(name), exact.reason(name));
          if (live.quantity(name) === undefined) assert.ok(live.reason(name), name);
        }
      }),
      { numRuns },
    );
  });

  it('mean what the methods give', () => {
    const solution = solveExact(short(bridge));
    for (const id of ['B1', 'A1', 'R1', 'V1', 'S1']) {
      assert.deepEqual(solution.quantity(`I_${id}`), solution.current(id));
      assert.deepEqual(solution.quantity(`V_${id}`), solution.voltage(id));
      assert.deepEqual(solution.quantity(`P_${id}`), solution.power(id));
    }
    assert.deepEqual(solution.quantity('R_R1'), solution.resistance('R1'));
    assert.deepEqual(solution.quantity('r_B1'), solution.resistance('B1'));
    assert.deepEqual(solution.quantity('R_total'), solution.totalResistance());
    assert.deepEqual(solution.quantity('I_total'), solution.totalCurrent());
    assert.equal(solution.quantity('E_B1')?.toFraction(), '6');
    assert.equal(solution.quantity('V_q_p')?.toFraction(), solution.voltage('R1')?.neg().toFraction());
  });

  it('may hold junctions with an underline in their names', () => {
    const solution = solveExact(short('B1 in_1 out_2 6; R1 in_1 out_2 3'));
    assert.equal(solution.quantity('V_in_1_out_2')?.toFraction(), '6');
  });

  it('that a circuit does not have are no quantity, with a suggestion where one is near', () => {
    for (const name of [
      '',
      'I',
      'R1', // a label is no name
      'V1',
      'I_',
      '_R1',
      'I_R9',
      'X_R1',
      'R_B1',
      'E_R1',
      'V_0_g',
      'Total',
      'total',
      'I_R1_',
    ]) {
      assert.equal(solve(short(bridge)).quantity(name), undefined);
      assert.equal(reason(bridge, name)?.[0], 'no such quantity', name);
    }
    assert.match(
      reason(bridge, 'I_R2')?.[1] ?? '',
      /“I_R2” is not a quantity of this circuit; did you mean I_R1\?/,
    );
  });

  it('suggest what a meter reads, what a label alone is short for, and V where U is written', () => {
    const circuit = short('B1 a g 6; A1 a p; R1 p g 3; V1 p g; I1 g p 1');
    const meant = { A1: 'I_A1', V1: 'V_V1', R1: 'R_R1', B1: 'E_B1', I1: 'I_I1', U_R1: 'V_R1', I_А1: 'I_A1' };
    for (const [name, quantity] of Object.entries(meant)) {
      const found = solve(circuit).reason(name);
      assert.ok(found?.code === 'no such quantity');
      assert.equal(found.data.suggestion, quantity, name);
    }
  });
});

describe('why there is no value', () => {
  for (const [what, circuit, name, code] of [
    [
      'an open switch has no resistance that is a number',
      'B1 a g 6; S1 a g open',
      'R_S1',
      'no finite resistance',
    ],
    ['nor has an ideal voltmeter', bridge, 'R_V1', 'no finite resistance'],
    [
      'two supplies have no total resistance',
      'B1 a g 6 1; B2 a g 4 1; R1 a g 8',
      'R_total',
      'several supplies',
    ],
    ['nor a loop resistance', 'B1 a g 6 1; B2 a g 4 1; R1 a g 8', 'R_loop', 'several supplies'],
    ['nor a total current', 'B1 a g 6 1; B2 a g 4 1; R1 a g 8', 'I_total', 'several supplies'],
    ['an open loop has no total resistance', 'B1 a g 6; S1 a b open; R1 b g 5', 'R_total', 'no path'],
    ['nor has a network whose terminals are apart', 'R1 a b 5; R2 c d 5; ends a c', 'R_total', 'no path'],
    ['a network without a supply has no current', 'R1 a b 5; ends a b', 'I_R1', 'no supply'],
    ['nor a p.d.', 'R1 a b 5; ends a b', 'V_a_b', 'no supply'],
    ['nor a loop resistance either', 'R1 a b 5; ends a b', 'R_loop', 'no supply'],
    [
      'a voltmeter joined to nothing has no steady reading',
      'B1 a g 6; R1 a g 5; V1 c d',
      'V_V1',
      'no steady reading',
    ],
    ['nor one with one lead on the circuit', 'B1 a g 6; R1 a g 5; V1 a d', 'V_V1', 'no steady reading'],
    ['nor one between two circuits', 'B1 a g 6; R1 a g 5; B2 c d 6; V1 a c', 'V_V1', 'no steady reading'],
    [
      'what is taken out has no resistance that is a number',
      'B1 a g 6; L1 a g 5 broken',
      'R_L1',
      'no finite resistance',
    ],
    [
      'nor has a supply that is taken out, inside',
      'B1 a g 6 1 broken; R1 a g 5',
      'r_B1',
      'no finite resistance',
    ],
    ['and nothing is driven by it', 'B1 a g 6 1 broken; R1 a g 5', 'R_total', 'no path'],
    ['a short circuit has no current', 'B1 a g 6; W1 a g', 'I_B1', 'circuit has a fault'],
  ] as const) {
    it(what, () => {
      const drawn = short(circuit);
      for (const solution of [solve(drawn), solveExact(drawn)])
        assert.equal(solution.quantity(name), undefined);
      assert.equal(reason(circuit, name)?.[0], code);
    });
  }

  it('with several supplies, the currents to ask for are named', () => {
    const circuit = 'B1 a g 6 1; B2 a g 4 1; R1 a g 8';
    assert.equal(
      reason(circuit, 'I_total')?.[1],
      'I_total is not defined with several supplies; ask for I_B1 or I_B2.',
    );
  });

  it('a current of 0 has a reason on an open branch, none in a balanced bridge or where it flows', () => {
    const open = 'B1 a g 6; R1 a g 5; S1 a b open; R2 b g 5; V1 a g; R3 c d 1; R4 c d 1';
    for (const name of ['I_S1', 'I_R2', 'I_V1', 'I_R3', 'I_R4'])
      assert.equal(reason(open, name)?.[0], 'no current', name);
    assert.equal(reason(open, 'I_R1'), undefined);
    assert.equal(reason('B1 a g 6; S1 a g open', 'I_total')?.[0], 'no current');
    const balanced = 'B1 a g 6; R1 a b 1; R2 b g 2; R3 a c 3; R4 c g 6; A1 b c';
    assert.equal(solve(short(balanced)).current('A1'), 0);
    assert.equal(reason(balanced, 'I_A1'), undefined);
  });

  it('a wire that bridges is no name, but its current can be read, from `from` to `to`', () => {
    const drawn = short('B1 a g 6; L1 a b 5 bridged; L2 b g 10; R1 b a 3 bridged; S1 b g open');
    const half = short('B1 a g 6; L1 a b 5 bridged; L2 b g 10');
    assert.ok(quantities(drawn).every((name) => !name.includes('bridge')));
    for (const solution of [solve(half), solveExact(half)])
      assert.equal(Number(solution.current('L1 bridge')), 0.6);
    assert.equal(solve(half).current('L2 bridge'), undefined);
    assert.doesNotMatch(JSON.stringify([solve(drawn).faults, solve(drawn).remarks]), /bridge"/);
    assert.deepEqual(solve(drawn).faults[0]?.ids, ['L1', 'R1']);
  });

  it('nothing flows through what is taken out, and that has a reason', () => {
    assert.equal(reason('B1 a g 6; L1 a g 5 broken; L2 a g 5', 'I_L1')?.[0], 'no current');
    assert.equal(reason('B1 a g 6; L1 a g 5 broken; L2 a g 5', 'I_L2'), undefined);
  });

  it('what is given is read even from a circuit with a fault', () => {
    const solution = solve(short('B1 a g 6; W1 a g; R1 a g 5'));
    assert.equal(solution.quantity('R_R1'), 5);
    assert.equal(solution.quantity('E_B1'), 6);
    assert.equal(solution.quantity('r_B1'), 0);
  });

  it('what is not there has no reading', () => {
    const solution = solve(short('B1 a g 6; R1 a g 5'));
    for (const reading of [
      solution.current('R2'),
      solution.voltage(''),
      solution.power('g'),
      solution.resistance('x'),
    ])
      assert.equal(reading, undefined);
    assert.equal(solution.potential('nowhere'), undefined);
  });
});
