import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { RheoletSteps } from '../../../src/components/steps/index.ts';
import { settled } from '../beside-board.ts';
import { emulateFeatures } from '../emulate-features.ts';
import { bench, pump, quay, type RulesBench } from './bench.ts';
import { eventually } from '../eventually.ts';

const solution = (made: RulesBench): RheoletSteps | undefined =>
  made.all('rheolet-steps')[0] as RheoletSteps | undefined;
const shown = (made: RulesBench): string[] =>
  [...(solution(made)?.shadowRoot?.querySelectorAll('[part~=answer] .heard') ?? [])].map(({ textContent }) =>
    textContent.trim().replaceAll('\u202f', ' '),
  );
const open = async (made: RulesBench, place: number): Promise<void> => {
  made.all('[part=work]')[place]!.click();
  await settled();
};

describe('the numbers of a rule are worked out', () => {
  it('under its line, one at a time, and away again', async () => {
    const made = await bench(pump, { rules: 'series' });
    expect(made.texts('[part=work]')).to.deep.equal(['Work it out', 'Work it out', 'Work it out']);
    await open(made, 0);
    await eventually(() => shown(made).length > 0);
    expect([solution(made)!.of, ...shown(made)]).to.deep.equal(['I_B1', 'equals 1.00 A']);
    expect(made.all('[part=work]').map(({ ariaExpanded }) => ariaExpanded)).to.deep.equal([
      'true',
      'false',
      'false',
    ]);
    await open(made, 2);
    await eventually(() => shown(made).join() === 'equals 9.00 Ω', shown(made).join());
    expect(made.all('rheolet-steps').length).to.equal(1);
    await open(made, 2);
    expect(made.all('rheolet-steps').length).to.equal(0);
  });

  it('and follow the board', async () => {
    const made = await bench(pump, { rules: 'series-current', board: 'quay' });
    await open(made, 0);
    await eventually(() => shown(made).join() === 'equals 1.00 A');
    made.board.set('R1', '13');
    await eventually(() => shown(made).join() === 'equals 0.500 A', shown(made).join());
  });

  it('of a block too', async () => {
    const made = await bench(`${pump} + (R3 6 Ω ∥ R4 12 Ω)`, { rules: 'parallel-resistance' });
    await open(made, 0);
    await eventually(() => shown(made).join().endsWith('beside R4 equals 4.00 Ω'), shown(made).join());
  });

  it('by keyboard: the button of the line that has the focus is the next stop', async () => {
    const made = await bench(pump, { rules: 'series' });
    await made.tab();
    await sendKeys({ press: 'ArrowDown' });
    await sendKeys({ press: 'Tab' });
    const active = (): Element | null => made.element.shadowRoot!.activeElement;
    expect(active()).to.equal(made.all('[part=work]')[1]);
    await sendKeys({ press: 'Enter' });
    await eventually(
      () => shown(made).length > 0 || solution(made)?.shadowRoot?.querySelector('[part=reason]'),
    );
    expect(solution(made)!.of).to.equal('V_B1');
  });

  it('not while the readings are covered', async () => {
    const made = await bench(pump, { rules: 'series' });
    await made.show(pump, { hide: 'readings' });
    expect(made.all('[part=work]').length).to.equal(0);
  });
});

const boxes = (made: RulesBench): HTMLInputElement[] => made.all('input') as HTMLInputElement[];
const compare = (made: RulesBench): HTMLButtonElement => made.all('[part=compare]')[0] as HTMLButtonElement;

/** A rule checker into which the pupil predicts. */
async function predicting(circuit: string, rules: string): Promise<RulesBench> {
  const made = await bench(circuit, { rules, predict: '' });
  await eventually(() => boxes(made).length > 0);
  return made;
}
async function write(made: RulesBench, ...texts: string[]): Promise<void> {
  texts.forEach((text, place) => {
    const box = boxes(made)[place]!;
    box.value = text;
    box.dispatchEvent(new Event('input'));
  });
  await made.element.updateComplete;
}
async function press(made: RulesBench): Promise<void> {
  compare(made).click();
  await settled();
}

describe('a rule is predicted into', () => {
  it('its quantities stand in a table, and no number of the board is told before', async () => {
    const made = await predicting(quay, 'parallel-current');
    expect(made.texts('thead th')).to.deep.equal(['Quantity', 'I predict', 'The board has']);
    expect(made.texts('tbody th .heard')).to.deep.equal([
      'current through A1',
      'current through R1',
      'current through A2',
    ]);
    expect(boxes(made).map(({ ariaLabel }) => ariaLabel)[0]).to.equal('current through A1 in A');
    for (const number of ['4.5', '1.5', '3.0']) expect(made.everything).not.to.contain(number);
    expect(made.all('[part=work]').length, 'nor worked out').to.equal(0);
    expect(compare(made).disabled, 'first predict').to.equal(true);
  });

  it('then compared with the board, which the page is told', async () => {
    const made = await predicting(quay, 'parallel-current');
    const told: object[] = [];
    made.page.addEventListener('rheolet-answer', ({ detail }) => void told.push(detail));
    await write(made, '4.5', '3 A');
    await press(made);
    expect(made.texts('tbody td:last-child')).to.deep.equal([
      '4.50 A as predicted',
      '1.50 A not as predicted',
      '3.00 A',
    ]);
    expect(made.everything).to.contain('holds');
    expect(told).to.deep.equal([
      { board: 'quay', quantity: 'I_A1', value: 4.5, text: '4.5', right: true },
      { board: 'quay', quantity: 'I_R1', value: 1.5, text: '3 A', right: false },
    ]);
    expect(boxes(made).every(({ readOnly }) => readOnly)).to.equal(true);
    await press(made);
    expect(made.everything, 'covered again').not.to.contain('1.50');
    expect(boxes(made)[0]!.value, 'what was written stays').to.equal('4.5');
  });

  it('what the circuit states is not asked', async () => {
    const made = await predicting(quay, 'ohm');
    expect(made.texts('tbody th .heard').some((name) => name.startsWith('resistance'))).to.equal(false);
  });

  it('a constant current that the circuit states is not asked, what it shares into is', async () => {
    const made = await predicting('I1 0.6 A + (R1 10 Ω ∥ R2 20 Ω)', 'parallel-current');
    const asked = made.texts('tbody th .heard');
    expect(
      asked.some((name) => name.endsWith('R1')),
      asked.join(),
    ).to.equal(true);
    expect(
      asked.some((name) => name.endsWith('I1')),
      asked.join(),
    ).to.equal(false);
  });

  it('fits a narrow column, is large enough to press, and is open to everybody', async () => {
    const made = await predicting(quay, 'parallel');
    await write(made, '9');
    await press(made);
    made.page.style.width = '280px';
    await settled();
    const wide = made.all('*').filter((node) => node.getBoundingClientRect().right > 300);
    expect(wide.map(({ localName }) => localName)).to.deep.equal([]);
    for (const each of [...boxes(made), ...made.all('button')]) {
      const { width, height } = each.getBoundingClientRect();
      expect(Math.min(width, height), each.localName).to.be.at.least(24);
    }
    await expect(made.element).to.be.accessible();
  });

  it('on paper the boxes are left empty, and no button stands there', async () => {
    const made = await predicting(quay, 'parallel-current');
    await emulateFeatures({}, 'print');
    expect(made.all('button').some((each) => each.checkVisibility())).to.equal(false);
    expect(made.all('table').every((each) => each.checkVisibility())).to.equal(true);
    expect(made.everything).not.to.contain('4.5');
  });
});
