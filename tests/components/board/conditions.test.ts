import { aTimeout, expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { parseCircuit } from '../../../src/engine/index.ts';
import { Flow } from '../../../src/components/board/flow.ts';
import { BoardStore } from '../../../src/components/board/store.ts';
import { boardWith, pumpLine, quayLine, text, type Bench } from './bench.ts';

const buttons = (bench: Bench): Element[] => bench.all('.alter button');
const condition = (bench: Bench, id: string): string | null =>
  bench.component(id).getAttribute('data-condition');

async function choose(bench: Bench, id: string): Promise<void> {
  bench.component(id).dispatchEvent(new MouseEvent('click', { bubbles: true }));
  await bench.settled();
}

async function press(bench: Bench, label: string): Promise<void> {
  bench.button(label).click();
  await bench.settled();
  await bench.settled();
}

async function key(bench: Bench, name: string): Promise<void> {
  await sendKeys({ press: name });
  await bench.settled();
  await bench.settled();
}

function changes(bench: Bench): string[] {
  const heard: string[] = [];
  bench.board.addEventListener('rheolet-change', ({ detail: { id, quantity, value, text: now, unit } }) =>
    heard.push([id, quantity, value, now, unit].join('|')),
  );
  return heard;
}

describe('the component that is chosen', () => {
  it('by a click or by the focus has two buttons, which say what they do and to what', async () => {
    const bench = await boardWith(quayLine);
    expect(buttons(bench)).to.have.length(0);
    await choose(bench, 'L1');
    expect(buttons(bench).map(text)).to.deep.equal(['Take out L1', 'Wire across L1']);
    bench.component('R1').focus();
    await bench.settled();
    expect(buttons(bench).map(text)).to.deep.equal(['Take out R1', 'Wire across R1']);
  });

  it('stays chosen while the pointer goes elsewhere, so that its buttons can be reached', async () => {
    const bench = await boardWith(quayLine);
    await choose(bench, 'L1');
    const over = (id: string): boolean =>
      bench.component(id).dispatchEvent(new PointerEvent('pointerover', { bubbles: true }));
    over('A1');
    await bench.settled();
    expect(bench.caption, 'what is pointed at is read').to.match(/^A1/);
    expect(buttons(bench).map(text)[0]).to.equal('Take out L1');
    bench.find('.stage').dispatchEvent(new PointerEvent('pointerleave'));
    await bench.settled();
    expect(bench.caption).to.match(/^L1/);
  });

  it('is none after Escape, in the drawing and on its buttons, and the focus is in the drawing', async () => {
    const bench = await boardWith(quayLine);
    for (const place of ['drawing', 'button']) {
      await choose(bench, 'L1');
      if (place === 'button') bench.button('Take out').focus();
      await key(bench, 'Escape');
      expect(buttons(bench), place).to.have.length(0);
      expect(bench.board.shadowRoot?.activeElement?.getAttribute('data-id'), place).to.equal('L1');
    }
  });

  it('has buttons that are large enough for a finger, and a board that is accessible', async () => {
    const bench = await boardWith(quayLine);
    await choose(bench, 'L1');
    for (const button of buttons(bench))
      expect(button.getBoundingClientRect().height).to.be.at.least(
        matchMedia('(pointer: coarse)').matches ? 44 : 24,
      );
    await press(bench, 'Take out');
    await expect(bench.board).to.be.accessible();
  });
});

describe('a component is taken out or bridged', () => {
  it('by its buttons, one instead of the other, and put back by the same one', async () => {
    const bench = await boardWith(quayLine);
    await choose(bench, 'L1');
    const pressed = (): (string | null)[] =>
      buttons(bench).map((button) => button.getAttribute('aria-pressed'));
    expect(pressed()).to.deep.equal(['false', 'false']);
    for (const [label, settings, state] of [
      ['Take out', { L1: 'broken' }, ['true', 'false']],
      ['Wire across', { L1: 'bridged' }, ['false', 'true']],
      ['Wire across', {}, ['false', 'false']],
      ['Undo', { L1: 'bridged' }, ['false', 'true']],
      ['Reset', {}, ['false', 'false']],
    ] as const) {
      await press(bench, label);
      expect(bench.board.settings, label).to.deep.equal(settings);
      expect(pressed(), label).to.deep.equal(state);
      expect(condition(bench, 'L1'), label).to.equal('L1' in settings ? settings.L1 : null);
    }
  });

  it('by Delete and b on the focused component, and the focus stays', async () => {
    const bench = await boardWith(quayLine);
    bench.component('R1').focus();
    for (const [name, settings] of [
      ['Delete', { R1: 'broken' }],
      ['b', { R1: 'bridged' }],
      ['b', {}],
      ['Delete', { R1: 'broken' }],
      ['Delete', {}],
    ] as const) {
      await key(bench, name);
      expect(bench.board.settings, name).to.deep.equal(settings);
      expect(bench.board.shadowRoot?.activeElement?.getAttribute('data-id')).to.equal('R1');
    }
  });

  it('by a method, with or without a value, and a board may begin so', async () => {
    const bench = await boardWith(pumpLine);
    bench.board.set('R1', '20 broken');
    bench.board.set('L1', 'bridged');
    bench.board.set('S1', 'broken');
    expect(bench.board.settings).to.deep.equal({ R1: '20 broken', L1: 'bridged', S1: 'broken' });
    bench.board.circuit = {
      components: (bench.board.circuit?.components ?? []).map((each) =>
        each.id === 'L1' ? { ...each, condition: 'broken' as const } : each,
      ),
    };
    bench.board.settings = {};
    bench.board.set('L1', 'intact');
    expect(bench.board.settings).to.deep.equal({ L1: 'intact' });
  });

  it('and the page is told: which, and what it is now; a program’s act is not told', async () => {
    const bench = await boardWith(quayLine);
    const heard = changes(bench);
    await choose(bench, 'L1');
    await press(bench, 'Take out');
    await press(bench, 'Wire across');
    await press(bench, 'Wire across');
    bench.board.set('L1', 'broken');
    expect(heard).to.deep.equal(['L1||1|broken|', 'L1||1|bridged|', 'L1||0|intact|']);
    heard.length = 0;
    bench.board.set('R1', '20 bridged');
    bench.board.act('reset');
    expect(heard.map((each) => each.replace(/\s/g, ' '))).to.deep.equal([
      'R1|R_R1|12|12 Ω|Ω',
      'R1||0|intact|',
      'L1||0|intact|',
    ]);
  });

  it('not where the page hides that: neither by button nor by key', async () => {
    const bench = await boardWith(quayLine, { hide: 'conditions' });
    bench.component('L1').focus();
    await bench.settled();
    expect(buttons(bench)).to.have.length(0);
    await key(bench, 'Delete');
    await key(bench, 'b');
    expect(bench.board.settings).to.deep.equal({});
  });

  it('and nothing else in the drawing moves', async () => {
    const bench = await boardWith(quayLine);
    const places = (): string[] =>
      bench
        .all('.component:not([data-id=L1]) .symbol, text, .wire[data-node]')
        .map((part) => part.getAttribute('d') ?? `${part.getAttribute('x')} ${part.getAttribute('y')}`)
        .sort();
    const before = places();
    bench.board.set('L1', 'broken');
    await bench.settled();
    await bench.settled();
    expect(places()).to.deep.equal(before);
    expect(Number(getComputedStyle(bench.find('[data-id=L1] .symbol')).opacity)).to.be.lessThan(0.6);
    expect(bench.find('[data-id=L1] .wire').getAttribute('d'), 'two open ends').to.not.equal('');
  });
});

describe('what was done is heard', () => {
  const voice = (): string => document.querySelector('[data-rheolet-voice]')?.textContent ?? '';

  it('in the name of the component', async () => {
    const bench = await boardWith(quayLine);
    bench.board.set('L1', 'broken');
    await bench.settled();
    await bench.settled();
    expect(bench.component('L1').getAttribute('aria-label')).to.match(/^L1, taken out, 8 ohms/);
  });

  beforeEach(async () => {
    await aTimeout(600);
    document.querySelector('[data-rheolet-voice]')?.replaceChildren();
  });

  it('in the one voice of the page, also while the readings are covered, and then nothing of them', async () => {
    const bench = await boardWith(quayLine, { hide: 'readings' });
    bench.component('L1').focus();
    await sendKeys({ press: 'Delete' });
    await aTimeout(600);
    expect(voice()).to.equal('L1, taken out.');
    await sendKeys({ press: 'Delete' });
    await aTimeout(600);
    expect(voice()).to.equal('L1, back as it was.');
  });
});

describe('what flows where a component is taken out or bridged', () => {
  const glow = (bench: Bench): number => Number(bench.find('.moving circle').getAttribute('fill-opacity'));

  it('flows through the wire and not through the lamp, at rest and while a slider moves', () => {
    // 6 V over R1 alone, for the wire leaves L1 nothing: 0.5 A at 12 Ω, 0.3 A at 20 Ω
    const circuit = parseCircuit('B1 6 V + R1 [4..40] 12 Ω + L1 8 Ω bridged');
    const store = new BoardStore();
    store.open(circuit);
    const flow = new Flow(circuit);
    const now = (): Record<string, number> => {
      if (store.snapshot) flow.read(store.snapshot);
      return Object.fromEntries(flow.ids.map((id, place) => [id, flow.currents[place] ?? NaN]));
    };
    const expectCurrents = (amperes: number): void => {
      const currents = now();
      for (const id of ['R1', 'L1 bridge']) expect(currents[id], id).to.be.closeTo(amperes, 1e-12);
      expect(currents['L1']).to.equal(0);
      expect([...flow.powers]).to.deep.equal([0]);
    };
    expectCurrents(0.5);
    store.move('R1', 20);
    expectCurrents(0.3);
    store.set('R1', 20);
    expectCurrents(0.3);
  });

  for (const [condition, ribbons] of [
    ['broken', false],
    ['bridged', true],
  ] as const)
    it(`a lamp that is ${condition} does not glow, and there are ${ribbons ? '' : 'no '}ribbons`, async () => {
      const bench = await boardWith('B1 6 V + R1 12 Ω + L1 8 Ω');
      expect(glow(bench)).to.be.greaterThan(0);
      bench.board.set('L1', condition);
      await bench.settled();
      await bench.settled();
      expect(glow(bench)).to.equal(0);
      expect(bench.ribbons !== '').to.equal(ribbons);
    });
});
