import { expect } from '@open-wc/testing';
import { resetMouse, sendKeys } from '@web/test-runner-commands';
import { emulateFeatures } from '../emulate-features.ts';
import { settled } from '../beside-board.ts';
import { bench, box, button, press, quay, tested, type ClaimBench } from './bench.ts';

afterEach(() => resetMouse());

const choices = 'V_R1 = V_R2; I_A1 = 2 I_A2; R_total ≤ R_R2';

describe('a statement may be picked', () => {
  it('from those that the page gives, which are seen with subscripts and heard in words', async () => {
    const made = await bench(quay, { choices });
    expect(made.texts('[part=choice] [aria-hidden]')).to.deep.equal([
      'VR1 = VR2',
      'IA1 = 2 IA2',
      'Rtotal ≤ RR2',
    ]);
    expect(made.texts('[part=choice] .heard')).to.deep.equal([
      'p.d. across R1 equals p.d. across R2',
      'current through A1 equals 2 current through A2',
      'total resistance is at most resistance of R2',
    ]);
  });

  it('and is tested at once', async () => {
    const made = await bench(quay, { choices });
    await press(made, 'p.d. across R1 equals p.d. across R2');
    expect(made.element.value).to.equal('V_R1 = V_R2');
    expect(made.part('verdict')).to.contain('Always true');
    expect(made.all('[aria-pressed=true]').length).to.equal(1);
  });

  it('in the letters of the course', async () => {
    const made = await bench(quay, { choices: 'V_R1 = V_R2', claim: 'V_R1 > 0' });
    await made.show(quay, { course: 'U voltage' });
    expect(made.texts('[part=choice] [aria-hidden]')).to.deep.equal(['UR1 = UR2']);
    expect(box(made).value).to.equal('U_R1 > 0');
    await press(made, 'voltage across R1 equals voltage across R2');
    expect(made.part('verdict')).to.contain('Always true');
  });
});

describe('a claim by keyboard', () => {
  it('is typed and tested with Enter', async () => {
    const made = await bench(quay);
    await made.tab();
    await sendKeys({ type: 'I_A3 >= I_A1' });
    await sendKeys({ press: 'Enter' });
    await made.element.updateComplete;
    expect(made.part('verdict')).to.contain('Always true');
  });

  it('says once what was found out, in the page’s one voice, and is no live region', async () => {
    const made = await bench(quay);
    await tested(made, 'I_A1 = I_A2');
    expect(made.all('[aria-live], [role=status], output')).to.deep.equal([]);
    await new Promise((done) => setTimeout(done, 700));
    expect(document.querySelector('[data-rheolet-voice]')?.textContent).to.contain(
      'Only sometimes true. It fails with R1 at 11\u202fΩ.',
    );
  });

  it('ties its mistake to the box', async () => {
    const made = await bench(quay);
    await tested(made, 'I_A1 =');
    expect(box(made).getAttribute('aria-invalid')).to.equal('true');
    expect(made.all(`#${box(made).getAttribute('aria-describedby')}`).length).to.equal(1);
  });
});

describe('a claim and its page', () => {
  it('tell each other: an event for each test', async () => {
    const made = await bench(quay, { board: 'quay' });
    const told: object[] = [];
    made.page.addEventListener('rheolet-claim', ({ detail }) => void told.push(detail));
    await tested(made, 'I_A1 = I_A2');
    await tested(made, 'I_A1 =');
    expect(told).to.deep.equal([
      { board: 'quay', claim: 'I_A1 = I_A2', verdict: 'sometimes', proved: true },
      { board: 'quay', claim: 'I_A1 =', verdict: 'not understood', proved: true },
    ]);
  });

  it('its components stand out on the board while it is pointed at or has the focus', async () => {
    const made = await bench(quay, { claim: 'I_A1 = I_A2' });
    await made.leave(); // it may have come where the pointer was
    await made.tab();
    expect(made.lit).to.deep.equal(['A1', 'A2']);
    made.page.querySelector('button')!.focus();
    expect(made.lit).to.deep.equal([]);
    await made.point(box(made));
    expect(made.lit).to.deep.equal(['A1', 'A2']);
    await made.leave();
    expect(made.lit).to.deep.equal([]);
  });

  it('a form sends the statement, brings it back, and resets it', async () => {
    const made = await bench(quay, { claim: 'I_A1 = I_A2', name: 'claim' });
    const form = document.createElement('form');
    made.page.append(form);
    form.append(made.element);
    await settled();
    const sent = (): FormDataEntryValue | null => new FormData(form).get('claim');
    expect(sent()).to.equal('I_A1 = I_A2');
    await tested(made, 'V_R1 = V_R2');
    expect(sent()).to.equal('V_R1 = V_R2');
    form.reset();
    await settled();
    expect([sent(), made.part('verdict')]).to.deep.equal(['I_A1 = I_A2', '']);
    made.element.formStateRestoreCallback('I_A3 > 0');
    await settled();
    expect(sent()).to.equal('I_A3 > 0');
  });

  it('is not tested where it, or a fieldset round it, is disabled', async () => {
    const made = await bench(quay, { claim: 'I_A1 = I_A2', disabled: '', choices });
    expect([box(made), ...made.all('button')].every((each) => each.matches(':disabled'))).to.equal(true);
    made.element.disabled = false;
    await settled();
    expect(button(made, 'Test').disabled).to.equal(false);
  });

  it('says what is missing where there is no board', async () => {
    const made = await bench(quay, { board: 'pump' });
    made.board.remove();
    await settled();
    expect(made.part('problem')).to.equal('There is no board “pump” here.');
  });
});

describe('a claim fits its surroundings', () => {
  const full = async (): Promise<ClaimBench> => {
    const made = await bench(quay, { choices: `${choices}; R_total = R_R1 R_R2 / (R_R1 + R_R2)` });
    await tested(made, 'I_A1 = I_A2');
    return made;
  };

  it('a column of 280 pixels, in which nothing sticks out', async () => {
    const made = await full();
    made.page.style.width = '260px';
    await settled();
    const wide = made.all('*').filter((node) => node.getBoundingClientRect().right > 280);
    expect(wide.map(({ outerHTML }) => outerHTML)).to.deep.equal([]);
  });

  it('its buttons and its box are at least 24 pixels either way, whatever the size of letters', async () => {
    const made = await full();
    for (const size of ['16px', '9px', '32px']) {
      made.page.style.fontSize = size;
      for (const each of made.all('button, input')) {
        const { width, height } = each.getBoundingClientRect();
        expect(Math.min(width, height), each.textContent).to.be.at.least(24);
      }
    }
  });

  it('a statement reads from left to right in a page from right to left', async () => {
    const made = await full();
    made.page.dir = 'rtl';
    await settled();
    expect(getComputedStyle(box(made)).direction).to.equal('ltr');
    const [first, second] = made.all('[part=choice] sub').map((each) => each.getBoundingClientRect().x);
    expect(first).to.be.lessThan(second!);
  });

  it('on paper the statement and the verdict are left, without buttons to press', async () => {
    const made = await full();
    await emulateFeatures({}, 'print');
    expect(made.all('[part=verdict]')[0]!.checkVisibility()).to.equal(true);
    expect(made.all('[part=act]').some((each) => each.checkVisibility())).to.equal(false);
    expect(made.all('[part=choice]').every((each) => each.checkVisibility())).to.equal(true);
  });

  for (const [name, features] of [
    ['light', {}],
    ['dark', { 'prefers-color-scheme': 'dark' }],
    ['forced colours', { 'forced-colors': 'active' }],
  ] as const)
    it(`without a finding of axe in ${name}`, async () => {
      await emulateFeatures(features);
      const made = await full();
      Object.assign(made.page.style, { colorScheme: 'light dark', background: 'Canvas' });
      await expect(made.element).to.be.accessible();
      await tested(made, 'I_A1 = I_A9');
      await expect(made.element).to.be.accessible();
    });
});
