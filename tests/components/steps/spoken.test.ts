import { expect } from '@open-wc/testing';
import { workedSolution, type Step } from '../../../src/engine/explain/index.ts';
import { numberOf, repeats } from '../../../src/components/steps/line.ts';
import { spoken } from '../../../src/components/steps/spoken.ts';
import { momentOf, plain } from '../moment.ts';

const quay = 'B1 6 V + A1 + (R1 12 Ω ∥ R2 24 Ω)';

/** The steps to a quantity, in the way of a course. */
function steps(line: string, of: string, course = ''): readonly Step[] {
  const moment = momentOf(line, { course });
  const style = { ...moment.course, figures: 3 };
  return (
    workedSolution(moment.circuit, moment.solution, style, { of, given: '', lesson: '' }).derivation?.steps ??
    []
  );
}
const last = (line: string, of: string, course = ''): Step => {
  const step = steps(line, of, course).at(-1);
  if (!step) throw new Error(of);
  return step;
};
const pd = { letter: 'V', wording: 'p.d.' } as const;
const voltage = { letter: 'U', wording: 'voltage' } as const;

describe('what is heard of a step', () => {
  it('is its rule, its equation, that with numbers, and the number: a rung each', () => {
    expect(spoken(last(quay, 'I_R2'), { mode: 'steps', course: pd }).map(plain)).to.deep.equal([
      '',
      'For R2: p.d. is current times resistance.',
      'current through R2 equals p.d. across R2 divided by resistance of R2',
      'current through R2 equals 6.00 V divided by 24.0 Ω',
      'current through R2 equals 0.250 A',
    ]);
  });

  it('begins among hints with where to look', () => {
    const [look, ...rest] = spoken(last(quay, 'I_R2'), { mode: 'hints', course: pd });
    expect(look).to.equal('Look at R2.');
    expect(rest).to.deep.equal(spoken(last(quay, 'I_R2'), { mode: 'steps', course: pd }).slice(1));
  });

  it('says the class’s own word, and no letter with a subscript', () => {
    const all = steps(quay, 'I_R2', 'U voltage').flatMap((step) =>
      spoken(step, { mode: 'steps', course: voltage }),
    );
    expect(all.join(' '))
      .to.contain('voltage across R2')
      .and.to.not.match(/p\.d\.|_/);
  });

  it('leaves out the equation with numbers where the next rung says the same', () => {
    const [first] = steps(quay, 'I_R2');
    if (!first) throw new Error('no step');
    expect(repeats(first, pd)).to.equal(true);
    expect(spoken(first, { mode: 'steps', course: pd })[3]).to.equal('');
    expect(repeats(last(quay, 'I_R2'), pd)).to.equal(false);
  });

  it('is heard as repeated in the letters of the course alike', () => {
    const [first] = steps(quay, 'I_R2', 'U voltage');
    if (!first) throw new Error('no step');
    expect(repeats(first, voltage)).to.equal(true);
    expect(repeats({ ...first, substituted: 'V_R1 = 1 V' }, voltage)).to.equal(false);
  });

  it('has an equation that is numbered by its number in the place of a result', () => {
    const step = { ...last(quay, 'I_R2'), gives: '(1)', unknowns: ['I_1'] } as Step;
    expect(spoken(step, { mode: 'steps', course: pd }).at(-1)).to.equal(numberOf(step));
    expect(numberOf(step)).to.contain('1');
  });
});
