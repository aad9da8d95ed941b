import { expect } from '@open-wc/testing';
import { resetMouse, sendKeys } from '@web/test-runner-commands';
import { settled } from '../beside-board.ts';
import { bench, focused, pump, quay, type RulesBench } from './bench.ts';

afterEach(() => resetMouse());

const lines = (made: RulesBench): HTMLElement[] =>
  made.all('[part=line]').filter((line) => line.checkVisibility());
const at = (made: RulesBench): number => lines(made).findIndex((line) => line === focused(made));
async function press(...keys: string[]): Promise<void> {
  for (const key of keys) await sendKeys({ press: key });
}

describe('the lines are walked with the keyboard', () => {
  it('one stop of the Tab key, then the arrow keys, Home and End', async () => {
    const made = await bench(quay);
    const last = lines(made).length - 1;
    await made.tab();
    expect(at(made)).to.equal(0);
    await press('ArrowDown', 'ArrowDown');
    expect(at(made)).to.equal(2);
    await press('ArrowUp');
    expect(at(made)).to.equal(1);
    await press('End', 'ArrowDown');
    expect(at(made)).to.equal(last);
    await press('Home', 'ArrowUp');
    expect(at(made)).to.equal(0);
    expect(made.all('[part=line][tabindex="0"]').length).to.equal(1);
  });

  it('coming back with the Tab key finds the line that was left', async () => {
    const made = await bench(quay);
    await made.tab();
    await press('ArrowDown', 'ArrowDown', 'ArrowDown');
    await made.tab();
    expect(at(made)).to.equal(3);
  });

  it('what is folded away is opened by the stop after it, walked, and left out again when it is closed', async () => {
    const made = await bench(pump);
    const shown = lines(made).length;
    await made.tab();
    await press('Tab', 'Tab', 'Enter'); // past the line's own button
    expect(focused(made)?.localName).to.equal('summary');
    await settled();
    expect(lines(made).length).to.be.greaterThan(shown);
    lines(made)[0]!.focus();
    await press('End');
    expect(at(made)).to.equal(lines(made).length - 1);
    made.all('summary')[0]!.click();
    await settled();
    await made.tab();
    expect(at(made)).to.equal(0);
  });

  it('other keys are left to the page', async () => {
    const made = await bench(quay);
    await made.tab();
    const key = new KeyboardEvent('keydown', { key: 'a', bubbles: true, cancelable: true, composed: true });
    focused(made)!.dispatchEvent(key);
    expect(key.defaultPrevented).to.equal(false);
  });
});

describe('a line and its components belong together', () => {
  it('focusing a line makes its components stand out', async () => {
    const made = await bench(quay, { rules: 'ohm power' });
    await made.tab();
    expect(made.lit).to.deep.equal(['R1']);
    await press('ArrowDown');
    expect(made.lit).to.deep.equal(['L1']);
    await press('ArrowDown');
    expect(made.lit.sort()).to.deep.equal(['B1', 'L1', 'R1']);
    made.page.querySelector('button')!.focus();
    expect(made.lit).to.deep.equal([]);
  });

  it('pointing at a line goes before the focus, and leaving it brings that back', async () => {
    const made = await bench(quay, { rules: 'ohm' });
    await made.tab();
    await made.point(lines(made)[1]);
    expect(made.lit).to.deep.equal(['L1']);
    await made.leave();
    expect(made.lit).to.deep.equal(['R1']);
  });

  it('pointing at a rule above its lines lights nothing up', async () => {
    const made = await bench(quay, { rules: 'ohm' });
    await made.point(lines(made)[0]);
    await made.point(made.all('[part=rule]')[0]);
    expect(made.lit).to.deep.equal([]);
    await made.leave();
  });

  it('a rule that does not apply shows where, too', async () => {
    const made = await bench(quay, { rules: 'series-p.d. ohm' });
    made.all('summary')[0]!.click();
    await settled();
    await made.tab();
    await press('End');
    expect(made.lit).to.deep.equal(['B1']);
  });

  it('nothing stays lit when the rules are taken away', async () => {
    const made = await bench(quay, { rules: 'ohm' });
    await made.tab();
    made.element.remove();
    expect(made.lit).to.deep.equal([]);
  });
});

describe('the focus is never lost', () => {
  it('a line keeps it while its numbers change', async () => {
    const made = await bench(quay, { rules: 'ohm' });
    await made.tab();
    await press('ArrowDown');
    const line = focused(made);
    made.board.set('R1', '20');
    await settled();
    expect(focused(made)).to.equal(line);
    expect(line!.textContent).to.contain('L1');
  });

  it('it stays with a line that others come before', async () => {
    const made = await bench('B1 6 V + ((S1 open + R1 12 Ω) ∥ R2 6 Ω)', { rules: 'ohm' });
    await made.tab();
    expect(focused(made)!.textContent).to.contain('R2');
    made.board.set('S1', 'closed');
    await settled();
    expect(at(made)).to.equal(1);
    expect(focused(made)!.textContent).to.contain('R2');
    expect(made.lit).to.deep.equal(['R2']);
  });

  it('it is not taken by lines that change while it is elsewhere', async () => {
    const made = await bench(quay, { rules: 'ohm' });
    made.page.querySelector('button')!.focus();
    made.board.set('R1', '20');
    await settled();
    expect(document.activeElement?.localName).to.equal('button');
  });

  it('it goes to the first line where its own is no more', async () => {
    const made = await bench('B1 6 V + (R1 12 Ω ∥ (S1 closed + R2 6 Ω))', { rules: 'ohm' });
    await made.tab();
    await press('ArrowDown');
    expect(focused(made)!.textContent).to.contain('R2');
    made.board.set('S1', 'open');
    await settled();
    expect(focused(made)!.textContent).to.contain('R1');
  });
});
