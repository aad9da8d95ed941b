import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { ChangeDetail } from '../../../src/components/link/index.ts';
import { settled } from '../beside-board.ts';
import { drag } from '../board/bench.ts';
import { battery, boxes, mistakes, names, shown, sliders, steps, supplyBeside, type } from './bench.ts';

const both = ['e.m.f. of B1', 'internal resistance of B1'];

describe('a supply turns', () => {
  for (const [what, circuit, turns, expected] of [
    ['what has a range: the e.m.f.', battery(['0', '12']), '', [both[0]]],
    ['what has a range: the internal resistance', battery(undefined, ['0', '2']), '', [both[1]]],
    ['what has a range: both', battery(['0', '12'], ['0', '2']), '', both],
    ['both, where nothing has a range', battery(), '', both],
    ['the e.m.f. alone, where the page says so', battery(undefined, ['0', '2']), 'E', [both[0]]],
    ['the internal resistance alone, where the page says so', battery(['0', '12']), 'r', [both[1]]],
    ['both, where the page says so, E first', battery(['0', '12']), 'r  E', both],
    ['as unsaid, where the page says nothing that it knows', battery(['0', '12']), 'emf R', [both[0]]],
  ] as const)
    it(what, async () => {
      const { element } = await supplyBeside(circuit, turns ? { turns } : {});
      expect(names(element)).to.deep.equal(expected);
    });

  it('and shows the symbols of textbooks, E and r', async () => {
    const bench = await supplyBeside(battery());
    expect(bench.texts('[part=label]')).to.deep.equal(['B1', 'E', 'r']);
  });
});

describe('a supply has three ways to set each of its values', () => {
  it('native sliders with the value in words', async () => {
    const { element, board } = await supplyBeside(battery(['0', '12'], ['0', '2']));
    const [emf, inside] = sliders(element);
    expect([emf!.getAttribute('aria-valuetext'), inside!.getAttribute('aria-valuetext')]).to.deep.equal([
      '6 volts',
      '0.5 ohms',
    ]);
    drag(emf!, 18, true);
    drag(inside!, 2, true);
    expect(board.settings).to.deep.equal({ B1: '9 r 1' });
  });

  it('step buttons that stop at the ends', async () => {
    const { element, board } = await supplyBeside(battery(['0', '12'], ['0', '2']));
    for (const step of steps(element)) expect(step.getBoundingClientRect().width).to.be.at.least(24);
    steps(element)[1]!.click();
    steps(element)[2]!.click();
    await settled();
    expect(board.settings).to.deep.equal({ B1: '6.5 r 0' });
    expect(steps(element).map(({ disabled }) => disabled)).to.deep.equal([false, false, true, false]);
  });

  it('boxes that read a number with or without its unit', async () => {
    const { element, board } = await supplyBeside(battery(['0', '12'], ['0', '2']));
    await type(boxes(element)[0]!, '4500 mV');
    await type(boxes(element)[1]!, '1,5');
    expect(board.settings).to.deep.equal({ B1: '4.5 r 1.5' });
    expect(shown(element)).to.deep.equal(['4.5 V', '1.5 Ω']);
  });

  it('and say at the right box what cannot be had', async () => {
    const { element, board } = await supplyBeside(battery(['0', '12'], ['0', '2']));
    await type(boxes(element)[1]!, '3');
    await type(boxes(element)[0]!, '3 Ω');
    const said = mistakes(element);
    expect(said[1]).to.equal('3 Ω is outside 0 Ω to 2 Ω.');
    expect(said[0]).to.match(/\.$/).and.not.equal(said[1]);
    expect(board.settings).to.deep.equal({ B1: 'r 2' });
  });
});

describe('a supply of constant current', () => {
  it('is turned by a slider of its own, up and down and round', async () => {
    const bench = await supplyBeside('I1 [-2..2 step 0.05] 0.5 A + L1 8 Ω');
    const { element, board } = bench;
    expect([element.value, shown(element)]).to.deep.equal(['0.5', ['0.5 A']]);
    expect([names(element), bench.texts('[part=label]')]).to.deep.equal([['current of I1'], ['I1', 'I']]);
    await type(boxes(element)[0]!, '-250 mA');
    expect(board.settings).to.deep.equal({ I1: '-0.25' });
    expect(board.solution?.voltage('I1')?.valueOf()).to.equal(-2);
    await type(boxes(element)[0]!, '3 A');
    expect(mistakes(element)[0]).to.equal('3 A is outside −2 A to 2 A.');
  });

  it('has a range without one in the circuit, from 0 A on', async () => {
    const { element, board } = await supplyBeside('I1 0.5 A + L1 8 Ω');
    sliders(element)[0]!.focus();
    await sendKeys({ press: 'End' });
    await settled();
    expect(board.settings).to.deep.equal({ I1: '1' });
    expect(sliders(element)[0]!.getAttribute('aria-valuetext')).to.equal('1.0 amperes');
  });
});

describe('the ends of a supply’s sliders', () => {
  it('may be negative: the e.m.f. passes through zero', async () => {
    const { element, board } = await supplyBeside(battery(['-6', '6']));
    const [slider] = sliders(element);
    slider!.focus();
    await sendKeys({ press: 'Home' });
    await settled();
    expect([board.settings, shown(element)]).to.deep.equal([{ B1: '-6' }, ['−6 V']]);
    expect(slider!.getAttribute('aria-valuetext')).to.equal('−6 volts');
    for (let press = 0; press < 12; press += 1) await sendKeys({ press: 'ArrowRight' });
    await settled();
    expect(shown(element)).to.deep.equal(['0 V']);
    await type(boxes(element)[0]!, '-2.5');
    expect(board.settings).to.deep.equal({ B1: '-2.5' });
  });

  it('stay where they are, however it is turned, where the circuit states none', async () => {
    const { element, board } = await supplyBeside('B1 6 V r 0.5 Ω + L1 8 Ω');
    const ends = (): string[] => sliders(element).map(({ max }) => max);
    const before = ends();
    for (const slider of sliders(element)) drag(slider, Number(slider.max), true);
    await settled();
    expect(ends()).to.deep.equal(before);
    // Twice 6 V is 12 V, and the next of 1, 2, 5 × 10ⁿ is 20 V; twice 0.5 Ω is 1 Ω.
    expect(board.settings).to.deep.equal({ B1: '20 r 1' });
    board.set('B1', 200);
    await settled();
    expect([ends(), sliders(element)[0]!.value]).to.deep.equal([before, before[0]]);
  });

  it('and a supply without internal resistance has 0 Ω to begin with', async () => {
    const { element, board } = await supplyBeside('B1 6 V + L1 8 Ω');
    expect([shown(element), element.value]).to.deep.equal([['6 V', '0 Ω'], '6 r 0']);
    await type(boxes(element)[1]!, '2');
    expect(board.settings).to.deep.equal({ B1: 'r 2' });
    // A lamp of 8 Ω at 6 V behind 2 Ω: 0.6 A (Ohm's law, by hand).
    expect(board.solution!.quantity('I_L1')!.valueOf()).to.equal(0.6);
  });
});

describe('a supply tells the page what its pupil does', () => {
  it('with the name of the quantity that was turned', async () => {
    const { element, page } = await supplyBeside(battery(['0', '12'], ['0', '2']));
    const told: [string, ChangeDetail][] = [];
    page.addEventListener('rheolet-input', ({ detail }) => told.push(['input', detail]));
    page.addEventListener('rheolet-change', ({ detail }) => told.push(['change', detail]));
    const [emf, inside] = sliders(element);
    drag(emf!, 18, true);
    drag(inside!, 2, true);
    const brief = told.map(([name, { board, id, quantity, value, unit }]) => [
      name,
      board,
      id,
      quantity,
      value,
      unit,
    ]);
    expect(brief).to.deep.equal([
      ['input', 'quay', 'B1', 'E_B1', 9, 'V'],
      ['change', 'quay', 'B1', 'E_B1', 9, 'V'],
      ['input', 'quay', 'B1', 'r_B1', 1, 'Ω'],
      ['change', 'quay', 'B1', 'r_B1', 1, 'Ω'],
    ]);
    expect(told.at(-1)![1].text.replace(/\s/g, ' ')).to.equal('1.0 Ω');
  });

  it('and nothing of what the page does', async () => {
    const { element, page, board } = await supplyBeside(battery());
    let told = 0;
    page.addEventListener('rheolet-change', () => (told += 1));
    element.value = '4 r 1';
    board.set('B1', 'r 0');
    await settled();
    expect([told, shown(element)]).to.deep.equal([0, ['4 V', '0.0 Ω']]);
  });
});

describe('controls of one supply', () => {
  it('follow each other', async () => {
    const { element, page } = await supplyBeside(battery(['0', '12'], ['0', '2']));
    const other = document.createElement('rheolet-supply');
    page.append(other);
    await settled();
    drag(sliders(element)[0]!, 18, false);
    await settled();
    expect(shown(other)).to.deep.equal(['9 V', '0.5 Ω']);
    drag(sliders(other)[1]!, 0, true);
    await settled();
    expect(shown(element)).to.deep.equal(['9 V', '0.0 Ω']);
  });

  it('settle what is moving when they leave the page', async () => {
    const { element, board } = await supplyBeside(battery(['0', '12'], ['0', '2']));
    const told: string[] = [];
    element.addEventListener('rheolet-change', ({ detail }) => told.push(detail.quantity));
    drag(sliders(element)[1]!, 3, false);
    element.remove();
    expect([board.snapshot!.moving, board.settings]).to.deep.equal([undefined, { B1: 'r 1.5' }]);
    expect(told, 'what moved').to.deep.equal(['r_B1']);
  });

  it('leave alone what the page moves', async () => {
    const { element, board } = await supplyBeside(battery(['0', '12'], ['0', '2']));
    let told = 0;
    element.addEventListener('rheolet-change', () => (told += 1));
    board.move('B1', '9');
    sliders(element)[0]!.dispatchEvent(new Event('blur'));
    expect([board.snapshot!.moving, told]).to.deep.equal(['B1', 0]);
  });
});

describe('a hidden supply', () => {
  it('tells neither of its values', async () => {
    const bench = await supplyBeside('B1 7.3 V r 0.9 Ω hidden + L1 8 Ω');
    expect(shown(bench.element)).to.deep.equal(['?', '?']);
    expect(bench.everything).to.not.contain('7.3').and.not.contain('0.9');
  });
});
