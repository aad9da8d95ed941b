import { expect } from '@open-wc/testing';
import { say } from '../../../src/engine/index.ts';
import { isRight, predictedOf } from '../../../src/components/rules/prediction.ts';
import { viewOf, type View } from '../../../src/components/rules/view.ts';
import { momentOf, plain } from '../moment.ts';

const quay = 'B1 6 V + A1 + (R1 12 Ω ∥ R2 24 Ω)';

type Seen = Parameters<typeof momentOf>[1];

/** What the rule checker shows of a circuit. */
function view(
  line: string,
  wish: { rules?: string; of?: string; predict?: boolean } = {},
  seen?: Seen,
): View {
  return viewOf(momentOf(line, seen), { rules: '', of: '', predict: false, ...wish });
}
/** What is heard of each rule that holds. */
const heard = ({ holding }: View): readonly string[] => holding.map(({ spoken }) => plain(spoken));

describe('the rules that hold in a circuit', () => {
  it('are lines with the components they are about, why they apply there, and the numbers', () => {
    const { holding, refusals, obstacles, problem } = view(quay, { rules: 'junction' });
    expect([holding.length, refusals, obstacles, problem]).to.deep.equal([1, [], [], undefined]);
    const [line] = holding;
    expect(line?.about).to.deep.equal(['A1', 'R1', 'R2']);
    expect(line?.why).to.equal('A1, R1 and R2 meet at one junction.');
    expect(plain(line?.spoken ?? '')).to.equal('0.750 A equals 0.500 A plus 0.250 A');
    expect(line?.terms.map(({ name }) => name)).to.deep.equal(['I_A1', 'I_R1', 'I_R2']);
  });

  it('have no two lines of one key, and keep them while numbers change', () => {
    const keys = (line: string): readonly string[] => view(line).holding.map(({ key }) => key);
    expect(new Set(keys(quay)).size).to.equal(keys(quay).length);
    expect(keys(quay.replace('12', '8'))).to.deep.equal(keys(quay));
  });

  it('are those about one component, where the page asks for one', () => {
    for (const { about } of view(quay, { of: 'R2' }).holding) expect(about).to.contain('R2');
    expect(view(quay, { rules: 'ohm', of: 'R2' }).holding.map(({ about }) => about)).to.deep.equal([['R2']]);
    expect(view(quay, { of: 'A1' }).holding.length).to.be.lessThan(view(quay).holding.length);
  });

  it('are written with the figures and the decimal sign of the course', () => {
    expect(heard(view(quay, { rules: 'junction' }, { course: '2 comma' }))).to.deep.equal([
      '0,75 A equals 0,50 A plus 0,25 A',
    ]);
  });

  it('keep their numbers back where the pupil is to predict, or the board is covered', () => {
    for (const made of [
      view(quay, { rules: 'junction ohm', predict: true }),
      view(quay, { rules: 'junction ohm' }, { covered: true }),
    ]) {
      expect(heard(made)).to.deep.equal([
        'I of A1 equals I of R1 plus I of R2',
        'V of R1 equals I of R1 times R of R1',
        'V of R2 equals I of R2 times R of R2',
      ]);
      expect(made.holding.flatMap(({ numbers }) => numbers)).to.deep.equal([]);
    }
  });

  it('keep back what is hidden, and with it what would tell it', () => {
    const [line] = view('B1 6 V + A1 + R1 12 Ω hidden', { rules: 'ohm' }).holding;
    expect(plain(line?.spoken ?? '')).to.equal('V of R1 equals I of R1 times R of R1');
    expect(JSON.stringify(line?.numbers)).to.not.match(/12/);
  });
});

describe('the rules that do not apply', () => {
  it('stand with their reason, those with the same reason in one line', () => {
    const { refusals } = view(quay);
    const [first] = refusals;
    expect(refusals.map(({ why, rules }) => [why, rules.length])).to.deep.equal([
      ['A1 and R1 are not in series: the current splits between them.', 1],
      ['No path here has two parts to add up.', 2],
      ['B1 is a supply, not a resistance.', 1],
    ]);
    expect(first?.about).to.deep.equal(['A1', 'R1']);
    expect(refusals.map(({ key }) => key)).to.deep.equal(refusals.map(({ why }) => why));
  });

  it('call a p.d. as the class does', () => {
    const { refusals } = view(quay, {}, { course: 'voltage' });
    expect(refusals.flatMap(({ rules }) => rules).join())
      .to.contain('voltage')
      .and.to.not.contain('p.d.');
  });

  it('are none where one reason holds for all of them, nor in a faulty circuit: that stands there alone', () => {
    for (const [line, obstacle] of [
      ['B1 6 V + S1 open + R1 12 Ω', 'No current: the circuit is open at S1.'],
      ['B1 6 V + A1', /^B1 is short-circuited through A1/],
    ] as const) {
      const { holding, refusals, obstacles } = view(line);
      expect([holding, refusals, obstacles.length]).to.deep.equal([[], [], 1]);
      expect(obstacles[0]).to.match(obstacle instanceof RegExp ? obstacle : new RegExp(`^${obstacle}$`));
    }
  });

  it('are a sentence where the page asks for what is not there, beside what is', () => {
    const typo = view(quay, { rules: 'junctoin ohm' });
    expect(typo.problem && say(typo.problem)).to.contain('did you mean junction?');
    const whole = view(quay, { rules: 'juncton-lwa ohm' });
    expect(whole.problem && say(whole.problem)).to.contain('did you mean junction-law?');
    expect(typo.holding.length, 'the others are shown').to.equal(2);
    const absent = view(quay, { of: 'R9' });
    expect(absent.problem && say(absent.problem))
      .to.contain('R9')
      .and.to.contain('did you mean R1');
    expect([absent.holding, absent.refusals, absent.obstacles]).to.deep.equal([[], [], []]);
  });
});

describe('what a pupil predicts of the rules', () => {
  const predicted = (line: string, rules: string, seen?: Seen): readonly string[] =>
    predictedOf(momentOf(line, seen), view(line, { rules, predict: true }, seen).holding).map(
      ({ name, text }) => `${name} = ${plain(text)}`,
    );

  it('are the quantities of their equations, none twice, and none that the circuit states', () => {
    expect(predicted(quay, 'ohm')).to.deep.equal([
      'V_R1 = 6.00 V',
      'I_R1 = 0.500 A',
      'V_R2 = 6.00 V',
      'I_R2 = 0.250 A',
    ]);
    expect(predicted(quay, 'junction series-current')).to.deep.equal([
      'I_B1 = 0.750 A',
      'I_A1 = 0.750 A',
      'I_R1 = 0.500 A',
      'I_R2 = 0.250 A',
    ]);
  });

  it('is nothing of what is hidden', () => {
    expect(predicted('B1 6 V + A1 + R1 12 Ω hidden', 'ohm').join()).to.not.contain('R_R1');
  });

  it('is a magnitude, with the figures and the decimal sign of the course', () => {
    expect(predicted('B1 6 V + B2 2 V reversed + R1 12 Ω', 'power').join()).to.not.contain('−');
    expect(predicted(quay, 'junction', { course: '2 comma' })[0]).to.equal('I_A1 = 0,75 A');
  });

  it('is right where it rounds to what the board has, in any prefix, and wrong else', () => {
    const moment = momentOf('B1 6 V + A1 + R1 13 Ω');
    const [one] = predictedOf(moment, view('B1 6 V + A1 + R1 13 Ω', { rules: 'series-current' }).holding);
    if (!one) throw new Error('nothing to predict');
    for (const typed of ['0.4615', '0.462', '0.462 A', '462 mA', '0,462'])
      expect(isRight(typed, one), typed).to.equal(true);
    for (const typed of ['', '0.472', '0.5', '462', '0.462 V', 'much', '−0.47'])
      expect(isRight(typed, one), typed).to.equal(false);
  });
});
