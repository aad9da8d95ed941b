import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { explain, parseCircuit, quantities, say, solveExact } from '../../../src/engine/index.ts';

const said = (line: string, find: string): string[] =>
  explain(parseCircuit(line), { find }).steps.map(({ why, substituted }) =>
    `${say(why)} ${substituted}`.replaceAll('\u202f', ' '),
  );

const gap = 'B1 6 V + R1 4 Ω + (R2 8 Ω ∥ (R3 3 Ω + S1 open))';

describe('where no current flows', () => {
  it('is said because no closed path leads through, and so there is no p.d. across a resistance', () => {
    assert.deepEqual(said(gap, 'V_R3'), [
      'No closed path leads through R3: no current flows there. I_R3 = 0 A',
      'For R3: p.d. is current times resistance. V_R3 = 0 A × 3.00 Ω',
    ]);
  });

  it('the p.d. across a gap is what is left round a loop', () => {
    assert.deepEqual(said('B1 6 V r 1 Ω + R1 4 Ω + L1 3 Ω broken', 'V_L1'), [
      'No closed path leads through R1: no current flows there. I_R1 = 0 A',
      'For R1: p.d. is current times resistance. V_R1 = 0 A × 4.00 Ω',
      'No closed path leads through B1: no current flows there. I_B1 = 0 A',
      'For B1: part of the e.m.f. is the p.d. across the internal resistance. Vr_B1 = 0 A × 1.00 Ω',
      'For B1: part of the e.m.f. is the p.d. across the internal resistance. V_B1 = 6.00 V − 0 V',
      'Round the loop of L1, R1 and B1 the potential comes back to where it was: it falls as far as it rises. V_L1 = 6.00 V − 0 V',
    ]);
  });

  it('is said because something leads round without resistance, which takes the whole current', () => {
    const line = 'B1 6 V + R1 4 Ω + ((R2 8 Ω + R3 2 Ω) ∥ (A1 + S1 closed))';
    assert.deepEqual(said(line, 'I_R2'), [
      'No current flows through R2: A1 and S1 lead round it without resistance. I_R2 = 0 A',
    ]);
    assert.deepEqual(said(line, 'I_A1'), [
      'For R1: p.d. is current times resistance. I_B1 = 6.00 V ÷ 4.00 Ω',
      'The same current flows through A1 and B1. I_A1 = 1.50 A',
    ]);
  });

  it('a reading of a current there cannot be right', () => {
    const { reason } = explain(parseCircuit(gap), { given: { I_R3: '0.5', R_R3: '3' }, find: 'V_R3' });
    assert.equal(reason && say(reason), 'I_R3 cannot be right.');
  });

  const lines = [
    gap,
    'B1 6 V + S1 open + R1 4 Ω + L1 8 Ω',
    'B1 6 V + L1 6 V 3 W bridged + L2 6 V 3 W',
    'B1 6 V + R1 4 Ω + (S1 closed ∥ L1 6 V 3 W)',
    'B1 6 V + R1 4 Ω + (R2 8 Ω ∥ (R3 3 Ω + R4 2 Ω broken + A1)); V1 across R4; V2 across R3',
    'B1 6 V + R1 4 Ω + (R2 8 Ω ∥ A1 reversed) + (R3 8 Ω ∥ R4 4 Ω)',
    'B1 6 V + R1 4 Ω + ((S1 open + B2 3 V r 1 Ω) ∥ R2 2 Ω)',
    'B1 6 V r 1 Ω + (R1 10 Ω ∥ A1)',
    'B1 6 V + @p + R1 4 Ω; R2 3 Ω @p–@q; V1 @p–@q',
  ];
  for (const line of lines)
    it(`all currents and p.d.s of ${line} follow, and are as they are`, () => {
      const circuit = parseCircuit(line);
      const solution = solveExact(circuit);
      for (const find of quantities(circuit).filter((name) => /^[IV]_[^V]\d$/.test(name))) {
        const { answer } = explain(circuit, { find });
        assert.equal(answer?.value.toFraction(), solution.quantity(find)?.toFraction(), find);
      }
    });

  it('a supply beside what has no resistance still drives a current', () => {
    const circuit = parseCircuit('B1 6 V + R1 4 Ω + ((R2 2 Ω + B2 3 V) ∥ A1)');
    assert.deepEqual([solveExact(circuit).current('R2')?.toFraction()], ['3/2']);
    for (const find of ['I_R2', 'I_A1']) {
      const { answer } = explain(circuit, { find });
      if (answer)
        assert.equal(answer.value.toFraction(), solveExact(circuit).quantity(find)?.toFraction(), find);
    }
  });
});
