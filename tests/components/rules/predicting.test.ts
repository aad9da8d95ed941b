import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { settled } from '../beside-board.ts';
import { bench, held, quay, type RulesBench } from './bench.ts';
import { eventually } from '../eventually.ts';

const boxes = (made: RulesBench): HTMLInputElement[] => made.all('[part=prediction]') as HTMLInputElement[];
const compare = (made: RulesBench): HTMLButtonElement | undefined =>
  made.all('[part=compare]')[0] as HTMLButtonElement | undefined;
const verdicts = (made: RulesBench): string[] => made.texts('tbody td:last-child');

async function predicting(circuit: string, rules: string): Promise<RulesBench> {
  const made = await bench(circuit, { rules, predict: '' });
  await eventually(() => boxes(made).length > 0);
  return made;
}
async function type(made: RulesBench, place: number, text: string): Promise<void> {
  boxes(made)[place]!.focus();
  boxes(made)[place]!.select();
  await sendKeys({ type: text });
  await made.element.updateComplete;
}
async function press(made: RulesBench): Promise<void> {
  compare(made)!.click();
  await settled();
}

/** What the page hears of comparisons. */
function heard(made: RulesBench): { quantity: string; text: string; right: boolean; plain: boolean }[] {
  const told: { quantity: string; text: string; right: boolean; plain: boolean }[] = [];
  made.page.addEventListener('rheolet-answer', ({ detail, bubbles, composed, target }) => {
    const { quantity, text, right } = detail as { quantity: string; text: string; right: boolean };
    told.push({ quantity, text, right, plain: bubbles && composed && target === made.element });
  });
  return told;
}

describe('predictions are written by keyboard', () => {
  it('and the button wakes with the first sign that is no blank, and sleeps again without', async () => {
    const made = await predicting(quay, 'parallel-current');
    await type(made, 0, ' ');
    expect(compare(made)!.disabled, 'a blank is no prediction').to.equal(true);
    await type(made, 0, '4');
    expect(compare(made)!.disabled).to.equal(false);
    await sendKeys({ press: 'Backspace' });
    await made.element.updateComplete;
    expect(compare(made)!.disabled).to.equal(true);
  });

  it('whose arrows, Home and End move in the box, not along the lines', async () => {
    const made = await predicting(quay, 'parallel-current');
    await type(made, 1, '15');
    const box = boxes(made)[1]!;
    for (const key of ['ArrowUp', 'ArrowDown', 'End']) await sendKeys({ press: key });
    expect(made.element.shadowRoot!.activeElement).to.equal(box);
    await sendKeys({ press: 'Home' });
    await sendKeys({ type: '1.' });
    expect(box.value).to.equal('1.15');
  });

  it('and nothing is told before they are compared, nor of a box left empty', async () => {
    const made = await predicting(quay, 'parallel-current');
    const told = heard(made);
    await type(made, 1, '1.5');
    expect(told).to.deep.equal([]);
    await press(made);
    expect(told).to.deep.equal([{ quantity: 'I_R1', text: '1.5', right: true, plain: true }]);
    expect(verdicts(made)).to.deep.equal(['4.50 A', '1.50 A as predicted', '3.00 A']);
  });
});

describe('predictions of one quantity', () => {
  it('in two tables are one, told once', async () => {
    const made = await predicting(quay, 'parallel-current junction');
    const told = heard(made);
    expect(boxes(made).length).to.equal(6);
    await type(made, 0, '4.5');
    expect(boxes(made).map(({ value }) => value)).to.deep.equal(['4.5', '', '', '4.5', '', '']);
    await press(made);
    expect(told.map(({ quantity }) => quantity)).to.deep.equal(['I_A1']);
  });

  it('in another unit are compared as what they are', async () => {
    const made = await predicting(quay, 'parallel-current');
    const told = heard(made);
    await type(made, 0, '4500 mA');
    await type(made, 1, '1.5 V');
    await type(made, 2, 'three');
    await press(made);
    expect(told.map(({ right }) => right)).to.deep.equal([true, false, false]);
  });

  it('with a decimal comma, as the class writes it', async () => {
    const made = await predicting(quay, 'parallel-current');
    await made.show(quay, { course: 'comma' });
    const told = heard(made);
    await type(made, 0, '4,5');
    await press(made);
    expect(told[0]!.right).to.equal(true);
    expect(verdicts(made)[0]).to.equal('4,50 A as predicted');
  });
});

describe('a compared prediction', () => {
  it('is judged against the board as it then stands, and told once only', async () => {
    const made = await predicting(quay, 'parallel-current');
    const told = heard(made);
    await type(made, 1, '1.5');
    await press(made);
    made.board.set('R1', '18');
    await settled();
    expect(verdicts(made)[1]).to.equal('0.500 A not as predicted');
    expect(told.length, 'what the board does is no answer of the pupil').to.equal(1);
    await press(made);
    expect(told.length, 'nor is it to cover the numbers again').to.equal(1);
    await press(made);
    expect(told.map(({ right }) => right)).to.deep.equal([true, false]);
  });

  it('cannot be written over until the numbers are covered again', async () => {
    const made = await predicting(quay, 'parallel-current');
    await type(made, 0, '4');
    await press(made);
    await type(made, 0, '9');
    expect(boxes(made)[0]!.value).to.equal('4');
    await press(made);
    await type(made, 0, '9');
    expect(boxes(made)[0]!.value).to.equal('9');
  });

  it('may be worked out', async () => {
    const made = await predicting(quay, 'parallel-current');
    expect(made.all('[part=work]').length).to.equal(0);
    await type(made, 0, '4');
    await press(made);
    expect(made.all('[part=work]').length).to.equal(1);
  });
});

describe('the page has its numbers predicted, or not', () => {
  it('by an attribute that comes and goes, and a property that says the same', async () => {
    const made = await bench(quay, { rules: 'parallel-current' });
    expect([made.element.predict, boxes(made).length, compare(made)]).to.deep.equal([false, 0, undefined]);
    made.element.toggleAttribute('predict');
    await eventually(() => boxes(made).length > 0);
    expect(made.element.predict).to.equal(true);
    expect(held(made)[0]![1]).to.equal('?');
    made.element.predict = false;
    await settled();
    expect([boxes(made).length, compare(made)]).to.deep.equal([0, undefined]);
    expect(held(made)[0]![1]).to.equal('4.50 A = 1.50 A + 3.00 A');
  });

  it('has no table and no button where nothing can be predicted', async () => {
    const made = await predicting(quay, 'junction');
    await made.show('B1 6 V + A1');
    expect([made.all('table').length, compare(made)]).to.deep.equal([0, undefined]);
    await made.show('B1 9 V + R1 4 Ω + R2 5 Ω');
    expect([made.all('table').length, compare(made)]).to.deep.equal([0, undefined]);
  });

  it('does not ask for what is hidden, nor give it away', async () => {
    const made = await predicting('B1 12 V + R1 7 Ω hidden + R2 17 Ω', 'series ohm');
    const asked = made.texts('tbody th .heard').join();
    expect(asked).not.to.contain('resistance of R1');
    await type(made, 0, '0.5');
    await press(made);
    expect(made.everything).not.to.match(/\b7\.0/);
  });

  it('reads the board that it is moved to', async () => {
    const made = await predicting(quay, 'parallel-current');
    const { element, page } = made;
    element.remove();
    await settled();
    page.prepend(element);
    await settled();
    expect(boxes(made).length).to.equal(3);
    await type(made, 0, '4.5');
    await press(made);
    expect(verdicts(made)[0]).to.equal('4.50 A as predicted');
  });
});
