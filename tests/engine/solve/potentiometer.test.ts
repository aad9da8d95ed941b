import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { isTrack, withValue, type Circuit } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { quantities, solve, solveExact, track } from '../../../src/engine/solve/index.ts';
import { say } from '../../../src/engine/words/index.ts';
import { plain, wiperLines } from '../schematic/random-wipers.ts';

const read = (circuit: Circuit, name: string): string | undefined =>
  solveExact(circuit).quantity(name)?.toFraction();

const ohms = fc.integer({ min: 0, max: 500 });

describe('a potentiometer in a circuit', () => {
  it('without a load gives its share of the p.d.: V = E·Ra/(Ra + Rb) (common practice)', () => {
    fc.assert(
      fc.property(ohms, ohms, fc.integer({ min: 1, max: 24 }), (a, b, volts) => {
        fc.pre(a + b > 0);
        const circuit = parseCircuit(
          `B1 ${volts} V + potentiometer R1b ${b} Ω + (potentiometer R1a ${a} Ω ∥ V1)`,
        );
        assert.equal(read(circuit, 'V_V1'), new Fraction(volts * a, a + b).toFraction());
        assert.equal(read(circuit, 'I_B1'), new Fraction(volts, a + b).toFraction());
      }),
    );
  });

  it('with a load gives less, as if that were in parallel with its part (common practice)', () => {
    fc.assert(
      fc.property(ohms, ohms, fc.integer({ min: 1, max: 10_000 }), (a, b, load) => {
        fc.pre(a > 0 && b > 0);
        const circuit = parseCircuit(
          `B1 6 V + potentiometer R1b ${b} Ω + (potentiometer R1a ${a} Ω ∥ R2 ${load} Ω)`,
        );
        const together = new Fraction(a * load, a + load);
        assert.equal(read(circuit, 'V_R2'), together.mul(6).div(together.add(b)).toFraction());
        assert.ok(Number(solveExact(circuit).quantity('V_R2')) < (6 * a) / (a + b));
      }),
    );
  });

  it('of 10 kΩ at its middle sags under a voltmeter of 10 kΩ from half the p.d. to two fifths: 6 V give 2.4 V, not 3 V', () => {
    const line = (meter: string): string =>
      `B1 6 V + potentiometer R1b 5 kΩ + (potentiometer R1a 5 kΩ ∥ ${meter})`;
    // 5 kΩ beside 10 kΩ is 10/3 kΩ, and that of 25/3 kΩ in all is 2/5.
    assert.equal(read(parseCircuit(line('V1 10 kΩ')), 'V_V1'), '12/5');
    assert.equal(read(parseCircuit(line('V1')), 'V_V1'), '3');
  });

  it('as a whole has both resistances and the p.d. from end to end; its currents are those of its parts', () => {
    const parts = [
      ['potentiometer R1b 70 Ω', 'potentiometer R1a 30 Ω', 1],
      ['potentiometer R1a 70 Ω', 'potentiometer R1b 30 Ω', 1],
      ['potentiometer R1a 70 Ω reversed', 'potentiometer R1b 30 Ω', -1],
      ['potentiometer R1a 70 Ω', 'potentiometer R1b 30 Ω reversed', 1],
    ] as const;
    for (const [one, other, sign] of parts)
      for (const load of ['', ' ∥ R2 60 Ω']) {
        const circuit = parseCircuit(`B1 6 V + ${one} + (${other}${load}) + R3 10 Ω`);
        const solution = solveExact(circuit);
        const [volts, across] = ['R1a', 'R1b'].map((id) => solution.voltage(id)?.abs());
        assert.ok(volts && across);
        assert.equal(read(circuit, 'V_R1'), volts.add(across).mul(sign).toFraction(), one);
        assert.equal(read(circuit, 'R_R1'), '100');
        for (const letter of ['I', 'P']) {
          assert.equal(read(circuit, `${letter}_R1`), undefined);
          const reason = solution.reason(`${letter}_R1`);
          assert.equal(
            reason && say(reason),
            `The two parts of R1 may carry different currents; ask for ${letter}_R1a or ${letter}_R1b.`,
          );
        }
        assert.equal(solution.reason('E_R1')?.code, 'no such quantity');
      }
  });

  it('as a whole is none where a resistor is called so, or a part is missing from its board', () => {
    const circuit = parseCircuit('B1 6 V + R1 5 Ω + potentiometer R1a 70 Ω + potentiometer R1b 30 Ω');
    assert.equal(read(circuit, 'R_R1'), '5');
    assert.deepEqual(
      quantities(circuit).filter((name) => name.endsWith('_R1')),
      ['R_R1', 'I_R1', 'V_R1', 'P_R1'],
    );
    const broken = parseCircuit('B1 6 V + potentiometer R1a 70 Ω broken + potentiometer R1b 30 Ω');
    assert.equal(read(broken, 'R_R1'), undefined);
    assert.equal(read(broken, 'V_R1'), '6');
  });

  it('reads in any circuit what two resistors of those values read, and its power balances', () => {
    fc.assert(
      fc.property(wiperLines, (line) => {
        const circuit = parseCircuit(line);
        const [one, other] = [solveExact(circuit), solveExact(plain(circuit))];
        fc.pre(other.status === 'solved');
        assert.equal(one.status, 'solved');
        for (const { id } of circuit.components)
          for (const letter of ['I', 'V', 'P'])
            assert.equal(
              one.quantity(`${letter}_${id}`)?.toFraction(),
              other.quantity(`${letter}_${id}`)?.toFraction(),
              `${letter}_${id}`,
            );
        assert.ok(one.quantity('P_total')?.equals(one.quantity('P_dissipated') ?? -1));
      }),
      { numRuns: 300 },
    );
  });
});

const slider = parseCircuit(
  'B1 6 V + potentiometer R1b 70 Ω + (potentiometer R1a [0..100 step 1] 30 Ω ∥ L1 6 V 3 W)',
);

describe('a potentiometer at an end of its track', () => {
  it('has no fault of its own: the lamp is dark at one end and bright at the other', () => {
    const [dark, bright] = [0, 100].map((at) => solveExact(withValue(slider, 'R1a', at)));
    assert.deepEqual([dark?.status, bright?.status], ['solved', 'solved']);
    assert.deepEqual(
      [dark, bright].map((each) => each?.quantity('V_L1')?.valueOf()),
      [0, 6],
    );
    assert.equal(dark?.quantity('I_B1')?.toFraction(), '3/50');
    assert.deepEqual([...dark.cautions, ...(bright?.cautions ?? [])], []);
  });

  it('joined to its contact by a wire, as a rheostat, leaves the wire all the current', () => {
    const rheostat = parseCircuit(
      'B1 6 V + L1 6 V 3 W + potentiometer R1b 70 Ω + (potentiometer R1a [0..100 step 1] 30 Ω ∥ W1)',
    );
    for (const at of [0, 30, 100]) {
      const solution = solveExact(withValue(rheostat, 'R1a', at));
      assert.equal(solution.status, 'solved', `${at}`);
      const current = solution.quantity('I_L1');
      assert.ok(current && solution.quantity('I_W1')?.equals(current), `${at}`);
      assert.equal(solution.quantity('I_R1a')?.valueOf(), 0);
      assert.equal(solve(withValue(rheostat, 'R1a', at)).quantity('I_W1'), Number(current));
    }
    // A resistor of 0 Ω beside a wire stays what it was: nobody knows the share of either.
    const fixed = parseCircuit('B1 6 V + L1 6 V 3 W + (R1 0 Ω ∥ W1)');
    assert.deepEqual(
      solveExact(fixed).faults.map(({ code }) => code),
      ['share undetermined'],
    );
  });

  it('with a galvanometer and a cell of its own there is the short circuit that it is', () => {
    const null_ = parseCircuit(
      'B1 2 V + potentiometer R1b 1 Ω + (potentiometer R1a [0..1] 0 Ω ∥ (B2 1.5 V reversed + A1))',
    );
    const [fault] = solveExact(null_).faults;
    assert.equal(fault?.code, 'short circuit');
    assert.ok(fault.ids.includes('R1a') && fault.ids.includes('B2'));
    const [caution] = solveExact(null_).cautions;
    assert.equal(caution?.code, 'cell shorted');
  });

  it('compares an e.m.f. with another one by balance: no current at E2/E1 of its length (common practice)', () => {
    const bench = parseCircuit(
      'B1 2 V + potentiometer R1b 4 Ω + (potentiometer R1a [0..16 step 1] 12 Ω ∥ (A1 + B2 1.5 V reversed))',
    );
    assert.equal(read(bench, 'I_A1'), '0');
    const [less, more] = [11, 13].map((at) =>
      Number(solveExact(withValue(bench, 'R1a', at)).quantity('I_A1')),
    );
    assert.ok((less ?? 0) * (more ?? 0) < 0);
  });
});

describe('the rating of a potentiometer', () => {
  const loaded = (a: number, watts: string): Circuit =>
    parseCircuit(`B1 6 V + potentiometer R1b ${100 - a} Ω + (potentiometer R1a ${a} Ω ${watts} ∥ R2 10 Ω)`);
  const told = (circuit: Circuit): string[] =>
    solveExact(circuit).cautions.map((each) => (each.code === 'track overloaded' ? each.data.id : each.code));

  it('is that of the whole track: no part may carry more than √(P/R), however little it takes itself (common practice)', () => {
    // 1 W over 100 Ω is 0.1 A; the last 20 Ω of track before the load carry 0.207 A and take 0.85 W, below 1 W.
    assert.deepEqual(told(loaded(80, '1 W')), ['R1b']);
    assert.ok(Number(solveExact(loaded(80, '1 W')).quantity('P_R1b')) < 1);
    assert.deepEqual(told(loaded(80, '10 W')), []);
    assert.deepEqual(told(loaded(80, '')), []);
    assert.deepEqual(told(loaded(100, '0.1 W')), ['R1a'], 'a part of no length takes nothing');
  });

  it('is just met without a word, and told with the current and what the track may carry', () => {
    const across = (watts: string): Circuit =>
      parseCircuit(`B1 10 V + potentiometer R1a 40 Ω ${watts} + potentiometer R1b 60 Ω`);
    assert.deepEqual(told(across('1 W')), []);
    const [caution] = solveExact(across('0.25 W')).cautions;
    assert.match(
      caution ? say(caution) : '',
      /^Caution: R1a carries 0\.100.A, more than the 0\.0500.A .*\(0\.25.W over/,
    );
    const [hidden] = solveExact(
      parseCircuit('B1 10 V + potentiometer R1a 40 Ω 0.25 W hidden + potentiometer R1b 60 Ω'),
    ).cautions;
    assert.match(hidden ? say(hidden) : '', /more than the \? .*\(\? over/);
  });
});

describe('a tracked potentiometer', () => {
  it('is followed as it is solved, at any place, in either part', () => {
    fc.assert(
      fc.property(wiperLines, fc.nat(), fc.nat(10), (line, pick, share) => {
        const circuit = parseCircuit(line);
        const parts = circuit.components.filter(isTrack).filter(({ range }) => range);
        const part = parts[pick % parts.length];
        fc.pre(part?.range !== undefined);
        const at = part.range.max.value.mul(share).div(10);
        const expected = solve(withValue(circuit, part.id, at));
        const names = [
          ...circuit.components.flatMap(({ id }) => [`I_${id}`, `V_${id}`, `P_${id}`]),
          'R_total',
        ];
        const out = new Float64Array(names.length).fill(NaN);
        assert.equal(track(circuit, part.id, names).at(Number(at), out), expected.status === 'solved');
        names.forEach((name, place) => {
          const value = expected.quantity(name);
          if (value !== undefined)
            assert.ok(Math.abs(value - (out[place] ?? NaN)) <= 1e-9 * Math.max(1, Math.abs(value)), name);
        });
      }),
      { numRuns: 300 },
    );
  });

  it('gives a whole solution, and refuses what is no setting', () => {
    const tracker = track(slider, 'R1a', []);
    assert.equal(tracker.solution(100).quantity('V_L1'), 6);
    assert.throws(() => tracker.solution(101), /outside/);
  });
});
