import { aTimeout, expect, oneEvent } from '@open-wc/testing';
import { exact } from '../exact.ts';
import { sendKeys } from '@web/test-runner-commands';
import { CircuitFormatError } from '../../../src/engine/index.ts';
import type { ChangeDetail } from '../../../src/components/link/index.ts';
import { boardWith, comparing, drag, pumpLine, quayLine, text } from './bench.ts';

describe('what a pupil does on a board', () => {
  it('can be undone, redone and reset by buttons', async () => {
    const bench = await boardWith(quayLine);
    const { board } = bench;
    const press = async (label: string): Promise<Readonly<Record<string, string>>> => {
      bench.button(label).click();
      await bench.settled();
      return board.settings;
    };
    for (const label of ['Reset', 'Undo', 'Redo']) expect(bench.button(label).disabled, label).to.equal(true);
    drag(bench.slider, 16, true);
    drag(bench.slider, 0, true);
    await bench.settled();
    expect(await press('Undo')).to.deep.equal({ R1: '20' });
    expect(bench.digits('A1')).to.equal('1.05 A');
    expect(await press('Undo')).to.deep.equal({});
    expect(await press('Redo')).to.deep.equal({ R1: '20' });
    expect(await press('Reset')).to.deep.equal({});
    expect(bench.slider.value).to.equal('8');
    expect(await press('Undo')).to.deep.equal({ R1: '20' });
  });

  it('can be undone and redone by Ctrl+Z and Ctrl+Y, but letters are taken back in the box', async () => {
    const bench = await boardWith(quayLine);
    drag(bench.slider, 16, true);
    bench.slider.focus();
    await sendKeys({ down: 'Control' });
    await sendKeys({ press: 'z' });
    expect(bench.board.settings).to.deep.equal({});
    await sendKeys({ press: 'y' });
    expect(bench.board.settings).to.deep.equal({ R1: '20' });
    bench.find('rheolet-resistor').shadowRoot!.querySelector<HTMLElement>('[part=value]')!.focus();
    await sendKeys({ press: 'z' });
    await sendKeys({ up: 'Control' });
    expect(bench.board.settings).to.deep.equal({ R1: '20' });
  });

  it('is told to the page, what a program does is not', async () => {
    const bench = await boardWith(quayLine, { id: 'quay' });
    const { board } = bench;
    const heard: ChangeDetail[] = [];
    board.addEventListener('rheolet-change', ({ detail }) => heard.push(detail));
    board.addEventListener('rheolet-input', ({ detail }) => heard.push(detail));
    board.move('R1', 13);
    board.set('R1', 20);
    board.undo();
    board.redo();
    board.reset();
    board.settings = { R1: '5' };
    expect(heard).to.deep.equal([]);
    await bench.settled();
    bench.button('Undo').click();
    expect(heard.map(({ board: of, id, text: now }) => [of, id, now.replace(/\s/g, ' ')])).to.deep.equal([
      ['quay', 'R1', '12 Ω'],
    ]);
  });

  it('opens and closes a switch, by its button, its symbol and its key', async () => {
    const bench = await boardWith(pumpLine);
    const { board } = bench;
    const pressed = (): string | null => bench.button('S1').getAttribute('aria-pressed');
    expect(pressed()).to.equal('true');
    const change = oneEvent<CustomEvent<ChangeDetail>>(board, 'rheolet-change');
    bench.button('S1').click();
    expect((await change).detail).to.deep.include({
      id: 'S1',
      value: 0,
      text: 'open',
      quantity: '',
      unit: '',
    });
    await bench.settled();
    expect(pressed()).to.equal('false');
    expect(bench.component('S1').getAttribute('aria-label')).to.equal('S1, open, no current');
    bench.component('S1').dispatchEvent(new MouseEvent('click', { bubbles: true }));
    await bench.settled();
    expect(board.settings).to.deep.equal({});
    bench.component('S1').focus();
    await sendKeys({ press: 'Enter' });
    await bench.settled();
    expect(board.settings).to.deep.equal({ S1: 'open' });
    expect(board.shadowRoot?.activeElement?.getAttribute('data-id'), 'the focus stays').to.equal('S1');
  });

  it('what cannot be had is refused with a reason', async () => {
    const { board } = await boardWith(quayLine);
    expect(() => board.set('R1', 41)).to.throw(CircuitFormatError, '4');
    expect(() => board.set('R7', 4)).to.throw(CircuitFormatError, 'R7');
    expect(board.settings).to.deep.equal({});
  });
});

describe('the caption strip', () => {
  it('reads the component that is pointed at or focused', async () => {
    const bench = await boardWith(quayLine);
    expect(bench.caption).to.contain('Point at a component');
    bench.component('R1').dispatchEvent(new PointerEvent('pointerover', { bubbles: true }));
    await bench.settled();
    expect(bench.caption.replace(/\s/g, ' ')).to.match(
      /^R1 ?V = 6.00 V ?I = 0.500 A ?R = 12.0 Ω ?P = 3.00 W$/,
    );
    bench.component('L1').focus();
    await bench.settled();
    expect(bench.caption).to.contain('L1');
  });

  it('takes the letter and the figures of the course', async () => {
    const bench = await boardWith(quayLine, { course: 'U 2 comma' });
    bench.component('R1').focus();
    await bench.settled();
    expect(bench.caption.replace(/\s/g, ' ')).to.contain('U = 6,0 V').and.contain('I = 0,50 A');
  });

  it('compares with what is held', async () => {
    const bench = await boardWith(quayLine);
    const held = oneEvent(bench.board, 'rheolet-hold');
    bench.button('Hold').click();
    await comparing(bench);
    expect((await held).detail).to.deep.equal({ board: '', held: true });
    bench.board.set('R1', 24);
    bench.component('R1').focus();
    await bench.settled();
    expect(bench.caption.replace(/\s/g, ' '))
      .to.contain('V = 6.00 V (the same)')
      .and.contain('I = 0.250 A (fell by 0.250 A, × 0.500)')
      .and.contain('R = 24.0 Ω (rose by 12.0 Ω, × 2.00)');
    expect(exact(bench.board.held?.current('R1'))).to.equal('1/2');
    bench.button('Let go').click();
    await bench.settled();
    expect(bench.board.held).to.equal(undefined);
    expect(bench.caption).to.not.contain('fell');
  });

  it('does not tell a hidden value', async () => {
    const bench = await boardWith('B1 6 V + R1 12 Ω hidden');
    bench.component('R1').focus();
    await bench.settled();
    expect(bench.caption).to.contain('R = ?');
    expect(bench.component('R1').getAttribute('aria-label')).to.equal('R1, 0.500 amperes');
    expect(text(bench.find('[data-value=R1]'))).to.equal('?');
  });
});

describe('the arrow keys', () => {
  it('walk along the current from component to component, and across from branch to branch', async () => {
    const bench = await boardWith(quayLine);
    const inOrder = bench.all('[data-id]');
    expect(inOrder.filter((group) => group.getAttribute('tabindex') === '0')).to.have.length(1);
    bench.component('A1').focus();
    const after = async (key: string): Promise<string | null | undefined> => {
      await sendKeys({ press: key });
      return bench.board.shadowRoot?.activeElement?.getAttribute('data-id');
    };
    expect(await after('ArrowRight')).to.equal('R1');
    expect(await after('ArrowDown')).to.equal('A2');
    expect(await after('ArrowRight')).to.equal('L1');
    expect(await after('ArrowUp')).to.equal('R1');
    expect(await after('ArrowLeft')).to.equal('A1');
    expect(await after('ArrowLeft')).to.equal('B1');
    expect(await after('ArrowLeft')).to.equal('L1');
    expect(await after('Home')).to.equal('B1');
    expect(await after('End')).to.equal('L1');
    expect(bench.component('L1').getAttribute('tabindex')).to.equal('0');
    expect(bench.component('A1').getAttribute('tabindex')).to.equal('-1');
  });
});

describe('the one voice of the page', () => {
  const voice = (): string => document.querySelector('[data-rheolet-voice]')?.textContent ?? '';

  beforeEach(async () => {
    await aTimeout(600);
    document.querySelector('[data-rheolet-voice]')?.replaceChildren();
  });

  it('says what the meters read once a change has settled, and not while it moves', async () => {
    const bench = await boardWith(quayLine);
    drag(bench.slider, 15, false);
    await aTimeout(600);
    expect(voice()).to.equal('');
    drag(bench.slider, 16, true);
    await aTimeout(600);
    expect(voice()).to.equal('A1, 1.05 amperes. A2, 0.750 amperes.');
    expect(document.querySelectorAll('[role=status]')).to.have.length(1);
  });

  it('says what is wrong instead, where something is', async () => {
    const bench = await boardWith(pumpLine);
    bench.button('S1').click();
    await aTimeout(600);
    expect(voice()).to.contain('open at S1');
  });
});

describe('what a board shows', () => {
  it('can be hidden, word by word', async () => {
    const bench = await boardWith(pumpLine, { hide: 'ribbons labels sliders' });
    expect(bench.ribbons).to.equal('');
    expect(bench.all('[data-label]')).to.have.length(0);
    expect(bench.all('rheolet-resistor, [part=switch]')).to.have.length(0);
    bench.board.hide = 'values meters';
    await bench.settled();
    await bench.settled();
    expect(bench.all('[data-value]')).to.have.length(0);
    expect(bench.all('[data-label]')).to.have.length(5);
    expect(bench.ribbons).to.not.equal('');
    const heads = bench.ribbons.split('M').length;
    bench.board.hide = 'arrows';
    await bench.settled();
    await bench.settled();
    expect(bench.ribbons.split('M').length).to.be.lessThan(heads);
  });

  it('keeps its readings back for a prediction, in every word, until one button shows them', async () => {
    const bench = await boardWith(quayLine, { hide: 'readings' });
    expect(bench.digits('A1')).to.equal('?');
    bench.component('A1').focus();
    await bench.settled();
    expect(bench.caption).to.equal('covered: predict it first');
    expect(bench.component('A1').getAttribute('aria-label')).to.equal('A1');
    expect(bench.board.snapshot?.covered).to.equal(true);
    bench.button('Show the readings').click();
    await bench.settled();
    await bench.settled();
    expect(bench.digits('A1')).to.equal('1.25 A');
    expect(bench.caption).to.contain('A1');
    expect(bench.all('button').map(text)).to.not.contain('Show the readings');
  });

  it('draws zigzags for resistors where the page asks for ANSI symbols', async () => {
    const bench = await boardWith(quayLine);
    const before = bench.component('R1').querySelector('.symbol')!.getAttribute('d');
    bench.board.symbols = 'ansi';
    await bench.settled();
    await bench.settled();
    expect(bench.component('R1').querySelector('.symbol')!.getAttribute('d')).to.not.equal(before);
  });

  it('says what is wrong with a circuit that has no single answer, without ribbons or readings', async () => {
    const bench = await boardWith('B1 6 V + S1 closed + A1');
    expect(bench.notes).to.contain('B1 is short-circuited').and.contain('Caution');
    expect(bench.ribbons).to.equal('');
    expect(bench.digits('A1')).to.equal('—');
    bench.button('S1').click();
    await bench.settled();
    expect(bench.notes).to.contain('open at S1').and.not.contain('Caution');
  });

  it('makes components stand out, and these only', async () => {
    const { board, all } = await boardWith(quayLine).then((bench) => ({
      board: bench.board,
      all: () => bench.all('.lit'),
    }));
    board.light(['R1', 'L1']);
    expect(all().map((group) => group.getAttribute('data-id'))).to.have.members(['R1', 'L1']);
    board.light([]);
    expect(all()).to.have.length(0);
  });
});
