import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { boardWith, text, type Bench } from './bench.ts';

const focused = ({ board }: Bench): string => board.shadowRoot!.activeElement?.getAttribute('data-id') ?? '';

const keys = {
  '→': 'ArrowRight',
  '←': 'ArrowLeft',
  '↓': 'ArrowDown',
  '↑': 'ArrowUp',
  '|←': 'Home',
  '→|': 'End',
} as const;

const trees = {
  series: 'B1 6 V + S1 closed + R1 5 Ω + L1 7 Ω',
  parallel: 'B1 6 V + (R1 1 Ω ∥ R2 2 Ω ∥ R3 3 Ω)',
  mixed: 'B1 6 V + R1 1 Ω + (R2 2 Ω ∥ (A1 + L1 3 Ω)) + R3 4 Ω',
  nested: 'B1 6 V + (R1 1 Ω ∥ (R2 2 Ω + (R3 3 Ω ∥ R4 4 Ω) + R5 5 Ω))',
  uneven: 'B1 6 V + ((R1 1 Ω + R2 2 Ω + R3 3 Ω) ∥ L1 4 Ω)',
  groups: 'B1 6 V + (R1 1 Ω ∥ R2 2 Ω) + (R3 3 Ω ∥ R4 4 Ω)',
} as const;

describe('arrow keys walk along the current, and across to the branch beside', () => {
  for (const [tree, from, key, to] of [
    ['series', 'B1', '→', 'S1'],
    ['series', 'S1', '→', 'R1'],
    ['series', 'R1', '→', 'L1'],
    ['series', 'L1', '→', 'B1'],
    ['series', 'B1', '←', 'L1'],
    ['series', 'R1', '←', 'S1'],
    ['series', 'R1', '↓', 'R1'],
    ['series', 'R1', '↑', 'R1'],
    ['series', 'R1', '|←', 'B1'],
    ['series', 'B1', '→|', 'L1'],
    ['parallel', 'R1', '↓', 'R2'],
    ['parallel', 'R2', '↓', 'R3'],
    ['parallel', 'R3', '↓', 'R1'],
    ['parallel', 'R1', '↑', 'R3'],
    ['parallel', 'R3', '↑', 'R2'],
    ['parallel', 'B1', '→', 'R1'],
    ['parallel', 'B1', '↓', 'B1'],
    ['parallel', 'R3', '→', 'B1'],
    ['parallel', 'R2', '|←', 'B1'],
    ['parallel', 'R1', '→|', 'R3'],
    ['mixed', 'R1', '→', 'R2'],
    ['mixed', 'R2', '↓', 'A1'],
    ['mixed', 'A1', '→', 'L1'],
    ['mixed', 'A1', '↑', 'R2'],
    ['mixed', 'L1', '↑', 'R2'],
    ['mixed', 'L1', '→', 'R3'],
    ['mixed', 'R3', '↓', 'R3'],
    ['mixed', 'R3', '←', 'L1'],
    ['nested', 'R1', '↓', 'R2'],
    ['nested', 'R2', '↑', 'R1'],
    ['nested', 'R3', '↓', 'R4'],
    ['nested', 'R4', '↓', 'R3'],
    ['nested', 'R5', '↑', 'R1'],
    ['nested', 'R4', '→', 'R5'],
    ['nested', 'R5', '←', 'R4'],
    ['uneven', 'R1', '↓', 'L1'],
    ['uneven', 'R2', '↓', 'L1'],
    ['uneven', 'R3', '↓', 'L1'],
    ['uneven', 'L1', '↓', 'R1'],
    ['uneven', 'L1', '←', 'R3'],
    ['groups', 'R1', '↓', 'R2'],
    ['groups', 'R2', '↓', 'R1'],
    ['groups', 'R2', '→', 'R3'],
    ['groups', 'R3', '↑', 'R4'],
    ['groups', 'R4', '→', 'B1'],
  ] as const)
    it(`${tree}: ${from} ${key} ${to}`, async () => {
      const bench = await boardWith(trees[tree]);
      bench.component(from).focus();
      await sendKeys({ press: keys[key] });
      expect(focused(bench)).to.equal(to);
      const reached = bench.all('[data-id][tabindex="0"]').map((group) => group.getAttribute('data-id'));
      expect(reached, 'the one that the Tab key comes back to').to.deep.equal([to]);
    });

  for (const tree of Object.keys(trees) as (keyof typeof trees)[])
    it(`${tree}: as many steps as there are components lead round the whole circuit`, async () => {
      const bench = await boardWith(trees[tree]);
      const all = bench.all('[data-id]').map((group) => group.getAttribute('data-id'));
      bench.component('B1').focus();
      const seen: string[] = [];
      while (seen.length < all.length) {
        await sendKeys({ press: 'ArrowRight' });
        seen.push(focused(bench));
      }
      expect(seen).to.have.members(all).and.have.lengthOf(all.length);
      expect(seen.at(-1)).to.equal('B1');
    });

  for (const key of ['a', 'PageDown', 'Escape', '5'])
    it(`${key} is left to the page`, async () => {
      const bench = await boardWith(trees.series);
      bench.component('R1').focus();
      const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true });
      bench.component('R1').dispatchEvent(event);
      expect([event.defaultPrevented, focused(bench)]).to.deep.equal([false, 'R1']);
    });

  for (const held of ['ctrlKey', 'altKey', 'metaKey'] as const)
    it(`an arrow with ${held} is left to the browser`, async () => {
      const bench = await boardWith(trees.series);
      bench.component('R1').focus();
      const init = { key: 'ArrowRight', bubbles: true, cancelable: true, [held]: true };
      const event = new KeyboardEvent('keydown', init);
      bench.component('R1').dispatchEvent(event);
      expect([event.defaultPrevented, focused(bench)]).to.deep.equal([false, 'R1']);
    });
});

describe('the Tab key', () => {
  it('stops once in the drawing, then at each control in the order in which they stand', async () => {
    const bench = await boardWith('B1 6 V + S1 closed + R1 [4..40] 12 Ω');
    bench.component('S1').focus();
    const stops: string[] = [];
    for (let stop = 0; stop < 9; stop += 1) {
      await sendKeys({ press: 'Tab' });
      const active = bench.board.shadowRoot!.activeElement;
      const inner = active?.shadowRoot?.activeElement ?? active;
      stops.push(inner?.ariaLabel ?? (inner ? text(inner) : ''));
    }
    expect(stops).to.deep.equal([
      'Take out S1',
      'Wire across S1',
      'S1: closed',
      'R1',
      'R1: less',
      'R1, typed',
      'R1: more',
      'Hold readings',
      'Copy or save…',
    ]);
  });
});

describe('the caption says of each kind what a pupil would measure', () => {
  for (const [circuit, id, caption] of [
    ['B1 6 V + R1 12 Ω', 'B1', 'B1 V = 6.00 V I = 0.500 A P = 3.00 W'],
    ['B1 6 V r 1 Ω + R1 11 Ω', 'B1', 'B1 V = 5.50 V I = 0.500 A P = 2.75 W'],
    ['B1 9 V + B2 3 V reversed + R1 12 Ω', 'B2', 'B2 V = 3.00 V I = 0.500 A P = −1.50 W'],
    ['B1 6 V + R1 12 Ω', 'R1', 'R1 V = 6.00 V I = 0.500 A R = 12.0 Ω P = 3.00 W'],
    ['B1 6 V + L1 6 V 3 W', 'L1', 'L1 V = 6.00 V I = 0.500 A R = 12.0 Ω P = 3.00 W'],
    ['B1 6 V + S1 closed + R1 12 Ω', 'S1', 'S1 V = 0 V I = 0.500 A'],
    ['B1 6 V + S1 open + R1 12 Ω', 'S1', 'S1 V = 6.00 V I = no current'],
    ['B1 6 V + A1 + R1 12 Ω', 'A1', 'A1 I = 0.500 A'],
    ['B1 6 V + A1 reversed + R1 12 Ω', 'A1', 'A1 I = −0.500 A'],
    ['B1 6 V + R1 12 Ω; V1 across R1', 'V1', 'V1 V = 6.00 V'],
    ['B1 6 V + R1 7 Ω hidden + R2 5 Ω', 'R1', 'R1 V = 3.50 V I = 0.500 A R = ? P = 1.75 W'],
    ['B1 6 V + A1', 'A1', 'A1 I = —'],
    ['B1 6 V + R1 4.7 kΩ', 'R1', 'R1 V = 6.00 V I = 1.28 mA R = 4.70 kΩ P = 7.66 mW'],
  ] as const)
    it(`${circuit}: ${caption}`, async () => {
      const bench = await boardWith(circuit);
      bench.component(id).focus();
      await bench.settled();
      const readings = bench.all('[part=caption] .reading').map(text);
      expect([text(bench.find('[part=caption] b')), ...readings].join(' ')).to.equal(caption);
    });
});
