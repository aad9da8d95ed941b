import { expect } from '@open-wc/testing';
import { parseCircuit, say } from '../../../src/engine/index.ts';
import { leadsOf, pointsOf, type Leads } from '../../../src/components/meter/leads.ts';
import { targetOf } from '../../../src/components/meter/target.ts';

/** What a meter reads, and of which components; or the sentence why there is nothing to read. */
function read(line: string, of: string): string {
  const found = targetOf(parseCircuit(line), of);
  if ('code' in found) return say(found);
  return [found.quantity, found.about.join(' ') || 'none', found.meter?.id ?? 'no meter'].join(', ');
}

const quay = 'B1 6 V + A1 + R1 12 Ω; V1 across R1';

describe('what a meter reads', () => {
  for (const [line, of, target] of [
    [quay, 'A1', 'I_A1, A1, A1'],
    [quay, 'V1', 'V_V1, V1, V1'],
    ['B1 6 V + A1 + R1 12 Ω', '', 'I_A1, A1, A1'],
    ['B1 6 V + R1 12 Ω; V1 across R1', '', 'V_V1, V1, V1'],
    [quay, 'I_R1', 'I_R1, R1, no meter'],
    [quay, 'I_A1', 'I_A1, A1, no meter'],
    [quay, 'R_total', 'R_total, none, no meter'],
    [quay, 'V_p_q', 'V_p_q, none, no meter'],
    [quay, 'P_R1', 'P_R1, R1, no meter'],
  ] as const)
    it(`${of || 'the only one'} of ${line}`, () => {
      expect(read(line, of)).to.equal(target);
    });

  it('must be said where there are several, or none', () => {
    expect(read(quay, '')).to.match(/A1.*V1/);
    expect(read('B1 6 V + R1 12 Ω', '')).to.not.match(/R1|B1/);
  });

  it('is no component of another kind, which a sentence says, and the nearest meter of a label that is none', () => {
    expect(read(quay, 'R1')).to.contain('R1').and.to.not.contain('did you mean');
    expect(read(quay, 'A9')).to.contain('did you mean A1');
    expect(read('B1 6 V + R1 12 Ω', 'A1'), 'without any').to.not.contain('did you mean');
  });
});

describe('the leads of a movable voltmeter', () => {
  const line = 'B1 6 V + @Z + R1 1 Ω + @X + R2 2 Ω + @Y + R3 1 Ω';
  const leads = (of: string, moved?: Leads, circuit = line): string =>
    leadsOf(parseCircuit(circuit), of, moved)?.join(' ') ?? 'none';

  it('go to the points of the circuit, in the order of their letters', () => {
    expect(pointsOf(parseCircuit(line))).to.deep.equal(['X', 'Y', 'Z']);
    expect(pointsOf(parseCircuit('B1 6 V + @Z + (R1 1 Ω ∥ R2 2 Ω) + @A'))).to.deep.equal(['A', 'Z']);
    expect(pointsOf(parseCircuit('B1 6 V + R1 1 Ω'))).to.deep.equal([]);
  });

  it('start at the first and the last unless the page says where', () => {
    expect(leads('')).to.equal('X Z');
    expect(leads('V_Y_X')).to.equal('Y X');
    expect(leads('V_Y_Y'), 'both at one point').to.equal('Y Y');
  });

  it('stay where they were moved to, as long as the circuit has both points', () => {
    expect(leads('V_Y_X', ['X', 'Z'])).to.equal('X Z');
    expect(leads('V_Y_X', ['X', 'Q'])).to.equal('Y X');
    expect(leads('V_Y_Q', ['X', 'Q'])).to.equal('X Z');
    expect(leads('V_Y_X', ['Y', 'X'], 'B1 6 V + @P + R1 1 Ω + @X + R2 2 Ω')).to.equal('P X');
  });

  it('are nowhere where there are not two points', () => {
    expect(leads('', undefined, 'B1 6 V + @Z + R1 1 Ω')).to.equal('none');
    expect(leads('V_X_Y', ['X', 'Y'], 'B1 6 V + R1 1 Ω')).to.equal('none');
  });
});
