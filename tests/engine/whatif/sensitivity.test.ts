import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  Fraction,
  parseCircuit,
  say,
  sensitivity,
  solve,
  solveExact,
  withValue,
} from '../../../src/engine/index.ts';
import { intactCircuit } from '../solve/random-circuit.ts';

const reasons = (line: string, quantity: string, what: string): string[] =>
  sensitivity(parseCircuit(line), quantity, what).reasons.map((link) => say(link));

describe('the sensitivity of a quantity', () => {
  it('is the derivative that a small change shows, in any circuit', () => {
    let compared = 0;
    fc.assert(
      fc.property(
        intactCircuit,
        fc.nat(),
        fc.nat(),
        fc.constantFrom('I', 'V', 'P'),
        (circuit, a, b, letter) => {
          const resistors = circuit.components.filter(
            ({ kind, condition }) => kind === 'resistor' && !condition,
          );
          const what = resistors[a % Math.max(1, resistors.length)];
          const of = circuit.components[b % circuit.components.length];
          if (what?.kind !== 'resistor' || !of || solve(circuit).status === 'faulty') return;
          const name = `${letter}_${of.id}`;
          // Exact fractions: in decimals the difference of two that are nearly the same would be rounding.
          const step = what.resistance.value.mul(new Fraction(1, 1_000_000));
          const near = (by: Fraction): Fraction | undefined =>
            solveExact(withValue(circuit, what.id, what.resistance.value.add(by))).quantity(name);
          const [low, high] = [near(step.neg()), near(step)];
          // In balance only, ideal branches side by side share no current.
          if (!low || !high) return;
          const rough = Number(high.sub(low).div(step.mul(2)));
          const { value, direction } = sensitivity(circuit, name, what.id);
          assert.ok(
            Math.abs(Number(value) - rough) <= 1e-5 * Math.abs(rough) + 1e-9,
            `${name}: ${Number(value)}, ${rough}`,
          );
          assert.equal(
            direction,
            value.s * value.n > 0n ? 'rises' : value.n === 0n ? 'stays the same' : 'falls',
          );
          compared += 1;
        },
      ),
      { numRuns: 1000 },
    );
    assert.ok(compared > 300, `${compared}`);
  });

  it('is exact: of 6 V over R, the current falls by 6/R² for each ohm', () => {
    const { value, direction } = sensitivity(parseCircuit('B1 6 V + R1 12 Ω'), 'I_R1', 'R1');
    assert.equal(value.toFraction(), '-1/24');
    assert.equal(direction, 'falls');
  });

  it('is told for an e.m.f., for what is inside a supply, and for powers', () => {
    const circuit = parseCircuit('B1 6 V r 2 Ω + R1 10 Ω');
    const of = (name: string, what: string): string => sensitivity(circuit, name, what).value.toFraction();
    assert.equal(of('I_R1', 'B1'), '1/12');
    // V = 6 · 10 / (10 + r); dV/dr = −60/144.
    assert.equal(of('V_B1', 'r_B1'), '-5/12');
    // P = 36 R/(R + 2)²; at its derivative 36 (2 − R)/(R + 2)³.
    assert.equal(of('P_R1', 'R1'), '-1/6');
    // P inside = 36 r/(10 + r)²; derivative 36 (10 − r)/(10 + r)³.
    assert.equal(of('Pr_B1', 'r_B1'), '1/6');
    assert.equal(of('P_total', 'B1'), '1');
  });

  it('gives the chain of reasons, up to the whole and down again', () => {
    assert.deepEqual(reasons('B1 6 V + R1 4 Ω + (R2 6 Ω ∥ R3 12 Ω)', 'I_R3', 'R2'), [
      'The resistance of R2 rises.',
      'So the resistance of R2 and R3 together rises.',
      'So the current through B1 falls.',
      'So the p.d. across R2 and R3 together rises.',
      'So the current through R3 rises.',
    ]);
    assert.deepEqual(reasons('B1 6 V + R1 4 Ω + R2 6 Ω', 'V_R2', 'R1'), [
      'The resistance of R1 rises.',
      'So the current through B1 falls.',
      'So the p.d. across R2 falls.',
    ]);
    assert.deepEqual(reasons('B1 6 V + R1 4 Ω + R2 6 Ω', 'V_R1', 'R1'), [
      'The resistance of R1 rises.',
      'So the current through B1 falls.',
      'So the p.d. across R1 rises.',
    ]);
  });

  it('says that a cell without internal resistance keeps the p.d. of its branches, so that each is its own master', () => {
    assert.deepEqual(reasons('B1 6 V + (R1 4 Ω ∥ R2 6 Ω)', 'I_R2', 'R1'), [
      'The resistance of R1 rises.',
      'So the resistance of R1 and R2 together rises.',
      'So the current through B1 falls.',
      'But the p.d. across R1 and R2 together stays the same.',
      'So the current through R2 stays the same.',
    ]);
    assert.deepEqual(reasons('B1 6 V + A1 + R1 4 Ω', 'V_R1', 'R1'), [
      'The resistance of R1 rises.',
      'So the current through B1 falls.',
      'But the p.d. across R1 stays the same.',
    ]);
    assert.deepEqual(reasons('B1 6 V r 1 Ω + R1 4 Ω', 'V_B1', 'R1'), [
      'The resistance of R1 rises.',
      'So the current through B1 falls.',
      'So the p.d. across B1 rises.',
    ]);
  });

  it('gives no reasons where a resistance changes nothing, in an open branch or beside a short, nor for several supplies', () => {
    assert.deepEqual(reasons('B1 6 V + R1 4 Ω + (R2 6 Ω ∥ (R3 1 Ω + S1 open))', 'I_R1', 'R3'), []);
    assert.deepEqual(reasons('B1 6 V + R1 4 Ω + (R2 6 Ω ∥ S1 closed)', 'I_R1', 'R2'), []);
    assert.deepEqual(reasons('B1 6 V + R1 4 Ω + B2 3 V + R2 4 Ω', 'I_R1', 'R1'), []);
  });

  it('ends every chain with the way that the derivative says', () => {
    const lines = [
      'B1 6 V + (R1 4 Ω ∥ R2 6 Ω ∥ (R3 12 Ω + (R4 5 Ω ∥ R5 3 Ω)))',
      'B1 6 V + A1 + (R1 4 Ω ∥ (R2 6 Ω + R3 12 Ω)) + S1 closed + W1 + (R4 5 Ω ∥ R5 3 Ω)',
      'B1 6 V r 1 Ω + R1 4 Ω + (R2 6 Ω ∥ (R3 12 Ω + (R4 5 Ω ∥ R5 3 Ω)))',
      'B1 9 V r 1 Ω + (R1 4 Ω ∥ R2 6 Ω) + (R3 12 Ω ∥ (R4 5 Ω + R5 3 Ω))',
      'B1 9 V r 2 Ω + R1 4 Ω + (R2 6 Ω ∥ R3 12 Ω ∥ R4 5 Ω) + R5 3 Ω',
    ];
    for (const line of lines) {
      const circuit = parseCircuit(line);
      for (const what of ['R1', 'R2', 'R3', 'R4', 'R5']) {
        for (const target of ['R1', 'R2', 'R3', 'R4', 'R5']) {
          for (const letter of ['I', 'V']) {
            const { direction, reasons } = sensitivity(circuit, `${letter}_${target}`, what);
            const last = reasons.at(-1);
            const where = `${line}: ${letter}_${target} by ${what}`;
            assert.ok(last && 'change' in last.data, where);
            assert.equal(last.data.change, direction, where);
            assert.deepEqual(last.data.ids, [target], where);
            assert.equal(last.code, letter === 'I' ? 'so the current' : 'so the p.d.', where);
          }
        }
      }
    }
  });

  it('uses the word of the course', () => {
    const circuit = parseCircuit('B1 6 V + R1 4 Ω + R2 6 Ω');
    const said = sensitivity(circuit, 'V_R2', 'R1', { wording: 'voltage' }).reasons.map((link) => say(link));
    assert.equal(said.at(-1), 'So the voltage across R2 falls.');
  });

  it('is told for whatever obeys Ohm’s law: a lamp, a meter, a sensor', () => {
    const of = (line: string, name: string, what: string): string =>
      sensitivity(parseCircuit(line), name, what).value.toFraction();
    assert.equal(of('B1 6 V + L1 12 Ω', 'I_L1', 'L1'), '-1/24');
    assert.equal(of('B1 6 V + T1 12 Ω', 'I_T1', 'T1'), '-1/24');
    assert.equal(of('B1 6 V + A1 + R1 12 Ω', 'I_A1', 'A1'), '-1/24');
  });

  it('says why there is none', () => {
    const of = (line: string, name: string, what: string) => () =>
      sensitivity(parseCircuit(line), name, what);
    const line = 'B1 6 V + S1 closed + R1 12 Ω';
    assert.throws(of(line, 'I_R1', 'S1'), {
      name: 'RangeError',
      message: 'S1 has no value that could change.',
    });
    assert.throws(of('B1 6 V + T1 4 kΩ', 'I_T1', 'temperature'), {
      name: 'RangeError',
      message: 'What follows the temperature has no exact derivative; sweep shows how it goes.',
    });
    assert.throws(of(line, 'I_R1', 'R2'), {
      name: 'RangeError',
      message: 'There is no R2 in this circuit; did you mean R1?',
    });
    assert.throws(of(line, 'I_R2', 'R1'), /RangeError.*did you mean I_R1\?/);
    assert.throws(of('B1 6 V + LED1 + R1 12 Ω', 'I_R1', 'R1'), /RangeError.*LED1 does not obey Ohm’s law/);
  });
});
