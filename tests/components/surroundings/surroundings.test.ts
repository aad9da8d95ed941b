import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import fc from 'fast-check';
import type { ChangeDetail } from '../../../src/components/link/index.ts';
import { settled } from '../beside-board.ts';
import { drag, text } from '../board/bench.ts';
import {
  boxes,
  fog,
  frost,
  mistakes,
  names,
  shown,
  sliders,
  steps,
  surroundingsBeside,
  type,
  weather,
} from './bench.ts';

const heard = (told: readonly [string, ChangeDetail][]): unknown[] =>
  told.map(([name, { board, id, quantity, value, unit }]) => [name, board, id, quantity, value, unit]);

describe('surroundings turn', () => {
  for (const [what, circuit, of, expected] of [
    ['what a thermistor feels', frost, '', ['temperature']],
    ['what an LDR feels', fog, '', ['light']],
    ['what both feel', weather, '', ['temperature', 'light']],
    ['the temperature alone, where the page says so', weather, 'temperature', ['temperature']],
    ['the light alone, where the page says so', weather, 'light', ['light']],
  ] as const)
    it(what, async () => {
      const bench = await surroundingsBeside(circuit, of ? { of } : {});
      expect(names(bench.element)).to.deep.equal(expected);
      const words = bench.all('[part=label]').filter(({ hidden }) => !hidden);
      expect(words.map(text), 'what the eye reads').to.deep.equal(expected);
    });

  it('from where the circuit stands: as it says, else at 25 °C in 10 lx', async () => {
    const bench = await surroundingsBeside(weather);
    expect(shown(bench.element)).to.deep.equal(['5 °C', '200 lx']);
    await bench.show('B1 6 V + T1 10 kΩ + LDR1 8 kΩ');
    expect(shown(bench.element)).to.deep.equal(['25 °C', '10 lx']);
  });
});

describe('surroundings have three ways to set each of their values', () => {
  it('native sliders with the value in words', async () => {
    const { element, board } = await surroundingsBeside(weather);
    const [temperature, light] = sliders(element);
    const heardNow = [temperature!, light!].map((slider) => slider.getAttribute('aria-valuetext'));
    expect(heardNow).to.deep.equal(['5 degrees Celsius', '200 lux']);
    drag(temperature!, 40, true); // −40 °C and forty degrees
    drag(light!, 72, true); // 0.1 lx and three decades of 24
    expect(board.settings).to.deep.equal({ temperature: '0', light: '100' });
  });

  it('step buttons that stop at the ends', async () => {
    const { element, board } = await surroundingsBeside(weather);
    for (const step of steps(element)) expect(step.getBoundingClientRect().width).to.be.at.least(24);
    steps(element)[0]!.click();
    steps(element)[3]!.click();
    expect(board.settings).to.deep.equal({ temperature: '4', light: '220' });
    await type(boxes(element)[0]!, '125');
    await type(boxes(element)[1]!, '0.1');
    expect(steps(element).map(({ disabled }) => disabled)).to.deep.equal([false, true, true, false]);
  });

  it('boxes that read a number with or without its unit, also between two settings of the slider', async () => {
    const { element, board } = await surroundingsBeside(weather);
    await type(boxes(element)[0]!, '−5,5 °C');
    await type(boxes(element)[1]!, '1.2 klx');
    expect(board.settings).to.deep.equal({ temperature: '-5.5', light: '1200' });
    expect(shown(element)).to.deep.equal(['−5.5 °C', '1200 lx']);
    await type(boxes(element)[1]!, '333');
    expect(board.settings['light']).to.equal('333');
    expect(shown(element)[1]).to.equal('333 lx');
  });

  it('and say at the right box what cannot be had', async () => {
    const { element, board } = await surroundingsBeside(weather);
    await type(boxes(element)[0]!, '500');
    await type(boxes(element)[1]!, 'foggy');
    expect(mistakes(element)[0]).to.equal('500 °C is outside −40 °C to 125 °C.');
    expect(mistakes(element)[1]).to.match(/\.$/).and.not.equal(mistakes(element)[0]);
    expect(board.settings).to.deep.equal({ temperature: '125' });
    await type(boxes(element)[1]!, '0');
    expect(mistakes(element)[1]).to.equal('0 lx is outside 0.1 lx to 100000 lx.');
    expect(board.settings['light']).to.equal('0.1');
  });

  it('of which each reaches whatever a sensor is made for', async () => {
    const { element, board } = await surroundingsBeside(weather);
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: -400, max: 1250 }), async (tenths) => {
        await type(boxes(element)[0]!, `${tenths / 10}`);
        expect(Number(board.settings['temperature'] ?? 5)).to.equal(tenths / 10);
        expect(Math.abs(Number(sliders(element)[0]!.value) - 40 - tenths / 10)).to.be.at.most(0.5);
      }),
      { numRuns: 10 },
    );
  });
});

describe('what surrounds a circuit changes what it reads', () => {
  it('less light: more ohms, and so a larger share of the p.d.', async () => {
    const { element, board } = await surroundingsBeside(fog);
    const share = (): number => Number(board.solution!.quantity('V_V1'));
    expect(share()).to.be.closeTo((5 * 8) / 18, 1e-9);
    drag(sliders(element)[0]!, 0, true);
    // A hundredth of the light: 8 kΩ × 100^0.7 (common practice: a power of 0.7) = 201 kΩ.
    expect(share()).to.be.closeTo((5 * 8 * 100 ** 0.7) / (10 + 8 * 100 ** 0.7), 1e-5);
  });

  it('while it moves, too', async () => {
    const { element, board } = await surroundingsBeside(frost);
    drag(sliders(element)[0]!, 165, false);
    expect([board.snapshot!.moving, Number(board.snapshot!.readings.quantity('V_V1')) < 0.5]).to.deep.equal([
      'temperature',
      true,
    ]);
    const drawn = board.shadowRoot!.querySelector('.moving .ribbons')!;
    const before = drawn.getAttribute('d');
    drag(sliders(element)[0]!, 0, false);
    await settled();
    expect(drawn.getAttribute('d')).to.not.equal(before);
  });
});

describe('surroundings tell the page what their pupil does', () => {
  it('with the name of what was turned', async () => {
    const { element, page } = await surroundingsBeside(weather);
    const told: [string, ChangeDetail][] = [];
    page.addEventListener('rheolet-input', ({ detail }) => told.push(['input', detail]));
    page.addEventListener('rheolet-change', ({ detail }) => told.push(['change', detail]));
    drag(sliders(element)[0]!, 20, true);
    await type(boxes(element)[1]!, '50');
    expect(heard(told)).to.deep.equal([
      ['input', 'quay', 'temperature', 'temperature', -20, '°C'],
      ['change', 'quay', 'temperature', 'temperature', -20, '°C'],
      ['change', 'quay', 'light', 'light', 50, 'lx'],
    ]);
    expect(told.at(-1)![1].text.replace(/\s/g, ' ')).to.equal('50 lx');
  });

  it('and so does what a pupil undoes, redoes and resets on the board', async () => {
    const { element, board, page } = await surroundingsBeside(weather);
    drag(sliders(element)[0]!, 20, true);
    drag(sliders(element)[1]!, 0, true);
    await settled();
    const told: [string, ChangeDetail][] = [];
    page.addEventListener('rheolet-change', ({ detail }) => told.push(['change', detail]));
    sliders(element)[0]!.focus();
    await sendKeys({ down: 'Control' });
    await sendKeys({ press: 'z' });
    await sendKeys({ press: 'y' });
    await sendKeys({ up: 'Control' });
    board.act('reset');
    expect(told.map(([, { id, value }]) => `${id} ${value}`)).to.deep.equal([
      'light 200',
      'light 0.1',
      'temperature 5',
      'light 200',
    ]);
    await settled();
    expect(shown(element)).to.deep.equal(['5 °C', '200 lx']);
  });

  it('and nothing of what the page does', async () => {
    const { element, page, board } = await surroundingsBeside(weather);
    let told = 0;
    page.addEventListener('rheolet-change', () => (told += 1));
    element.value = 'temperature 30 light 1';
    board.set('temperature', 31);
    await settled();
    expect([told, shown(element)]).to.deep.equal([0, ['31 °C', '1 lx']]);
  });
});
