import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { settled } from '../beside-board.ts';
import { bench, box, button, press, quay, tested } from './bench.ts';

describe('a statement is tested over all settings', () => {
  it('and holds always, never, or only sometimes', async () => {
    const made = await bench(quay);
    expect(await tested(made, 'I_A1 + I_A2 = I_A3')).to.equal(
      'Always true: it holds at every setting of S1 and R1.',
    );
    expect(await tested(made, 'V_R1 > V_B1')).to.equal('Never true: it fails at every setting of S1 and R1.');
    expect(await tested(made, 'I_A1 = I_A2')).to.equal('Only sometimes true. It fails with R1 at 11 Ω.');
  });

  it('also where nothing can be turned', async () => {
    const made = await bench('B1 6 V + R1 12 Ω');
    expect(await tested(made, 'I_R1 = 0.5 A')).to.equal(
      'Always true: it holds here, where nothing can be turned.',
    );
    expect(await tested(made, 'I_R1 = 1 A')).to.equal(
      'Never true: it fails here, where nothing can be turned.',
    );
  });

  it('and says that it proves nothing where it has tried only some', async () => {
    const lamp = 'L1 filament 6 V 3 W';
    const made = await bench(`B1 [1..12 step 0.01] 6 V + R1 [1..40 step 0.1] 4 Ω + ${lamp}`);
    expect(await tested(made, 'V_R1 + V_L1 < 12.1 V')).to.match(
      /^It may always be true: it holds at all of [\d,]+ settings tried\. That is no proof\.$/,
    );
  });

  it('is not tested before the pupil asks, and no more once it is another one', async () => {
    const made = await bench(quay, { claim: 'I_A1 = I_A2' });
    expect(made.part('verdict')).to.equal('');
    expect(box(made).value).to.equal('I_A1 = I_A2');
    await press(made, 'Test');
    expect(made.part('verdict')).to.contain('Only sometimes');
    box(made).focus();
    await sendKeys({ press: 'End' });
    await sendKeys({ type: ' ' });
    await made.element.updateComplete;
    expect(made.part('verdict')).to.equal('');
  });

  it('again when the circuit becomes another one, and not while it is only turned', async () => {
    const made = await bench(quay, { claim: 'I_A1 < I_A3' });
    await press(made, 'Test');
    expect(made.part('verdict')).to.equal('Only sometimes true. It fails with S1 open.');
    made.board.set('R1', '20');
    await settled();
    expect(made.part('verdict')).to.equal('Only sometimes true. It fails with S1 open and R1 at 12 Ω.');
    made.board.set('R2', 'broken');
    await settled();
    expect(made.part('verdict')).to.equal('Never true: it fails at every setting of S1 and R1.');
  });
});

describe('where it fails the board can be shown', () => {
  it('in one step, which is undone in one', async () => {
    const made = await bench(quay, { claim: 'R_R1 ≠ 2' });
    expect(await tested(made, '(R_R1 − 2) I_A3 ≠ 0')).to.equal(
      'Only sometimes true. It fails with R1 at 2 Ω.',
    );
    await press(made, 'Show where it fails');
    expect(made.board.settings).to.deep.equal({ R1: '2' });
    expect(made.part('verdict')).to.equal('Only sometimes true. It fails as the board stands now.');
    made.board.undo();
    await settled();
    expect(made.board.settings).to.deep.equal({});
  });

  it('and keeps what is done to other components', async () => {
    const made = await bench('B1 6 V + R1 [2..40] 12 Ω + (R2 6 Ω ∥ R3 6 Ω)');
    made.board.set('R3', 'broken');
    await settled();
    await tested(made, 'I_R1 < 0.7 A');
    await press(made, 'Show where it fails');
    expect(made.board.settings).to.deep.equal({ R1: '2', R3: 'broken' });
  });

  it('as the pupil’s act, of which the page is told', async () => {
    const made = await bench('B1 [1..12] 6 V r [0..2] 1 Ω + S1 closed + R1 [2..40] 5 Ω');
    const told: string[] = [];
    made.board.addEventListener(
      'rheolet-change',
      ({ detail }) => void told.push(`${detail.id} ${detail.text}`),
    );
    await tested(made, 'I_R1 ≠ 0');
    expect(told).to.deep.equal([]);
    await press(made, 'Show where it fails');
    expect(told).to.deep.equal(['S1 open']);
  });

  it('by Ctrl+Z as well, which leaves the box alone', async () => {
    const made = await bench(quay, { claim: 'I_A1 = I_A2' });
    await press(made, 'Test');
    button(made, 'Show where it fails').focus();
    await sendKeys({ press: 'Enter' });
    expect(made.board.settings).to.deep.equal({ R1: '11' });
    await sendKeys({ down: 'Control' });
    await sendKeys({ press: 'z' });
    await sendKeys({ up: 'Control' });
    expect(made.board.settings).to.deep.equal({});
    expect(made.element.value).to.equal('I_A1 = I_A2');
    expect(made.element.shadowRoot!.activeElement).to.equal(button(made, 'Show where it fails'));
  });
});

describe('both sides are shown as the board stands', () => {
  it('live', async () => {
    const made = await bench(quay, { claim: 'I_A1 = I_A2' });
    await press(made, 'Test');
    expect(made.part('now')).to.equal(
      'As the board stands now it holds: the left side is 0.500 A, the right side 0.500 A.',
    );
    made.board.move('R1', '40');
    await settled();
    expect(made.part('now')).to.equal(
      'As the board stands now it fails: the left side is 0.150 A, the right side 0.500 A.',
    );
  });

  it('also where they differ in no figure that is written', async () => {
    const made = await bench('B1 6 V + R1 [1..9] 3 Ω');
    await tested(made, 'I_R1 = 1.9999 A');
    expect(made.part('now')).to.equal(
      'As the board stands now it fails: the left side is 2.00 A, the right side 2.00 A; they differ in later figures.',
    );
  });

  it('in the units and figures of the course', async () => {
    const made = await bench(quay);
    await made.show(quay, { course: 'U 2 comma' });
    await tested(made, 'U_R1 / U_R2 = 2');
    expect(made.part('now')).to.contain('the left side is 1,0, the right side 2,0.');
    await tested(made, 'U_R1 > 20 mV');
    expect(made.part('now')).to.contain('the left side is 6,0 V, the right side 0,020 V.');
  });

  it('but not what the pupil is to find', async () => {
    const hidden = 'B1 6 V + R1 7 Ω hidden + R2 5 Ω';
    const made = await bench(hidden);
    await tested(made, 'R_R1 > R_R2');
    expect(made.part('now')).to.equal('');
    await made.show(quay, { hide: 'readings' });
    await tested(made, 'I_A1 = I_A2');
    expect(made.part('now')).to.equal('');
    await made.show('B1 6 V + R1 [2..9] 7 Ω hidden + R2 5 Ω', { hide: '' });
    expect(await tested(made, 'V_R1 < V_R2')).to.match(/R1 at \?\.$|now\.$/);
  });
});

describe('a statement that is not understood', () => {
  const rows = [
    ['I_A1 = I_A9', '“I_A9” is not a quantity of this circuit. Did you mean I_A3?', 'I_A9'],
    ['I_A1 I_A2', 'Expected a comparison (=, <, >, ≤, ≥ or ≠) here.', ''],
    [
      'I_A1 + V_R1 = 2',
      'Only quantities of one kind can be added or compared, not A and V.',
      'I_A1 + V_R1 = 2',
    ],
    ['', 'Expected a quantity or a number (such as V_R1 or 2) here.', ''],
  ] as const;
  for (const [statement, sentence, piece] of rows)
    it(sentence, async () => {
      const made = await bench(quay);
      expect(await tested(made, statement)).to.equal(sentence);
      const { selectionStart, selectionEnd, value } = box(made);
      expect(value.slice(selectionStart!, selectionEnd!), 'is selected').to.equal(piece);
      expect(made.texts('mark')).to.deep.equal([piece]);
      expect(made.element.shadowRoot!.activeElement).to.equal(box(made));
      expect(made.part('verdict')).to.equal('');
    });

  it('is written as it was meant by one press, and tested', async () => {
    const made = await bench(quay);
    await tested(made, '2 I_A1 = I_A9 + I_A2');
    await press(made, 'Write I_A3');
    expect(made.element.value).to.equal('2 I_A1 = I_A3 + I_A2');
    expect(made.part('verdict')).to.contain('Only sometimes true.');
  });

  it('is answered in the letters of the course', async () => {
    const made = await bench(quay);
    await made.show(quay, { course: 'U' });
    expect(await tested(made, 'U_R9 = U_R2')).to.equal(
      '“U_R9” is not a quantity of this circuit. Did you mean U_R1?',
    );
    await press(made, 'Write U_R1');
    expect(made.element.value).to.equal('U_R1 = U_R2');
    expect(made.part('verdict')).to.contain('Always true');
  });
});
