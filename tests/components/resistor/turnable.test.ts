import { expect } from '@open-wc/testing';
import { parseCircuit, say } from '../../../src/engine/index.ts';
import { turnableOf } from '../../../src/components/resistor/turnable.ts';

/** The label of what a slider turns, or the sentence why there is no such thing. */
function turned(line: string, of = ''): string {
  const found = turnableOf(parseCircuit(line), of);
  return 'code' in found ? say(found) : found.id;
}

describe('the resistor that a slider turns', () => {
  const two = 'B1 6 V + R1 [4..40] 12 Ω + R2 [1..4] 4 Ω + R3 5 Ω';

  it('is the one of the label that is asked for, else the only one with a range', () => {
    expect(turned(two, 'R2')).to.equal('R2');
    expect(turned('B1 6 V + R1 4 Ω + R2 [4..40] 12 Ω')).to.equal('R2');
  });

  it('must be said where several may be meant', () => {
    expect(turned(two)).to.contain('R1').and.to.contain('R2').and.to.not.contain('R3');
  });

  it('is none without a range, which is another sentence than that of a label that is not there', () => {
    expect(turned(two, 'R3')).to.contain('R3').and.to.not.contain('did you mean');
    expect(turned(two, 'R4')).to.contain('R4').and.to.contain('did you mean');
    expect(turned('B1 6 V + R1 4 Ω', 'R1')).to.equal(turned('B1 6 V + R1 4 Ω + R2 [1..4] 2 Ω', 'R1'));
  });

  it('is a potentiometer once, unless the page names the other', () => {
    const dimmer =
      'B1 6 V + potentiometer R1b 70 Ω + (potentiometer R1a [0..100 step 1] 30 Ω ∥ L1 6 V 0.6 W)';
    expect(turned(dimmer)).to.equal('R1a');
    expect(turned(dimmer, 'R1b')).to.equal('R1b');
    expect(turned(dimmer.replace('L1 6 V 0.6 W', 'R2 [4..40] 12 Ω')), 'beside another')
      .to.contain('R1a')
      .and.to.not.contain('R1b');
  });
});
