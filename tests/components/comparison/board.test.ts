import { aTimeout, expect, oneEvent } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { boardWith, comparing, drag, quayLine, text, type Bench } from '../board/bench.ts';
import { bridge } from '../board/circuits.ts';
import { emulateFeatures } from '../emulate-features.ts';

/** The table of the comparison, row by row. */
const rows = (bench: Bench): string[][] =>
  bench.all('[part=table] tr').map((row) => [...row.querySelectorAll('th, td')].map(text));

async function held(line: string, attributes: Readonly<Record<string, string>> = {}): Promise<Bench> {
  const bench = await boardWith(line, attributes);
  bench.board.hold();
  await comparing(bench);
  await bench.settled();
  return bench;
}

describe('a board that holds its readings', () => {
  it('shows in a table what each has done since', async () => {
    const bench = await held(quayLine);
    expect(rows(bench)[3]).to.deep.equal([
      'R1',
      '6.00 V the same',
      '0.500 A the same',
      '12.0 Ω the same',
      '3.00 W the same',
    ]);
    bench.board.set('R1', '24');
    await bench.settled();
    expect(rows(bench).slice(1)).to.deep.equal([
      ['B1', '6.00 V the same', '1.00 A fell by 0.250 A, × 0.800', '', '6.00 W fell by 1.50 W, × 0.800'],
      ['A1', '', '1.00 A fell by 0.250 A, × 0.800', '', ''],
      [
        'R1',
        '6.00 V the same',
        '0.250 A fell by 0.250 A, × 0.500',
        '24.0 Ω rose by 12.0 Ω, × 2.00',
        '1.50 W fell by 1.50 W, × 0.500',
      ],
      ['A2', '', '0.750 A the same', '', ''],
      ['L1', '6.00 V the same', '0.750 A the same', '8.00 Ω the same', '4.50 W the same'],
    ]);
    expect(text(bench.find('caption'))).to.equal('Readings against the held ones');
  });

  it('moves on when they are held again, and lets go of them', async () => {
    const bench = await held(quayLine);
    bench.board.set('R1', '24');
    await bench.settled();
    bench.button('Hold').click();
    await bench.settled();
    expect(rows(bench)[3]![2]).to.equal('0.250 A the same');
    bench.board.set('R1', '6');
    await bench.settled();
    expect(rows(bench)[3]![2]).to.equal('1.00 A rose by 0.750 A, × 4.00');
    bench.button('Let go').click();
    await bench.settled();
    expect([rows(bench), bench.find('.held').getAttribute('d'), bench.digits('A1')]).to.deep.equal([
      [],
      '',
      '1.75 A',
    ]);
    expect(bench.all('button').map(text).includes('Let go of readings')).to.equal(false);
  });

  it('by a key in the drawing, and lets go by another', async () => {
    const bench = await boardWith(quayLine);
    bench.component('R1').focus();
    const told = oneEvent(bench.board, 'rheolet-hold');
    await sendKeys({ press: 'h' });
    expect((await told).detail).to.deep.equal({ board: '', held: true });
    await comparing(bench);
    const letGo = oneEvent(bench.board, 'rheolet-hold');
    await sendKeys({ down: 'Shift' });
    await sendKeys({ press: 'H' });
    await sendKeys({ up: 'Shift' });
    expect((await letGo).detail).to.deep.equal({ board: '', held: false });
    expect(bench.board.held).to.equal(undefined);
  });

  it('marks its meters where they rose or fell, and names what they did', async () => {
    const bench = await held(quayLine);
    expect(bench.digits('A1')).to.equal('1.25 A =');
    bench.board.set('R1', '6');
    await bench.settled();
    expect([bench.digits('A1'), bench.digits('A2')]).to.deep.equal(['1.75 A ▲', '0.750 A =']);
    expect(bench.component('A1').getAttribute('aria-label')!.replace(/\s/g, ' ')).to.equal(
      'A1, 1.75 amperes, rose by 0.500 amperes, × 1.40',
    );
    bench.board.set('R1', '24');
    await bench.settled();
    expect(bench.digits('A1')).to.equal('1.00 A ▼');
  });

  it('moves nothing of the drawing', async () => {
    const bench = await boardWith(quayLine);
    const drawn = (): string[] => {
      const page = bench.find('.still').getBoundingClientRect();
      return bench.all('.still :is(path, rect, text), .digits text').map((shape) => {
        const { x, y } = shape.getBoundingClientRect();
        const place = `${x - page.x} ${y - page.y}`;
        return shape.getAttribute('text-anchor') === 'start' ? place : (shape.getAttribute('d') ?? '');
      });
    };
    const before = drawn();
    bench.board.hold();
    await comparing(bench);
    await bench.settled();
    expect(drawn()).to.deep.equal(before);
  });

  it('marks how wide its ribbons were, and these marks stand still while a slider moves', async () => {
    const bench = await held(quayLine);
    const marks = bench.find('.held').getAttribute('d') ?? '';
    expect(marks).to.match(/^M/);
    const ribbons = bench.ribbons;
    for (const setting of [1, 5, 9]) {
      drag(bench.slider, setting, false);
      await bench.settled();
      expect(bench.find('.held').getAttribute('d')).to.equal(marks);
      expect(bench.ribbons).to.not.equal(ribbons);
    }
    expect(bench.all('animate, animateMotion, animateTransform').length).to.equal(0);
  });

  it('does not show widths where it shows no ribbons', async () => {
    const bench = await held(quayLine, { hide: 'ribbons' });
    expect(bench.find('.held').getAttribute('d')).to.equal('');
  });

  it('tells apart by exact values what is written alike', async () => {
    const bench = await held('B1 6 V + R1 [1..40 step 0.001] 12 Ω + A1');
    bench.board.set('R1', '12.001');
    await bench.settled();
    expect(rows(bench)[2]![2]).to.equal('0.500 A fell by 41.7 µA, × 0.9999');
    bench.board.set('R1', '12');
    await bench.settled();
    expect(rows(bench)[2]![2]).to.equal('0.500 A the same');
  });

  it('finds the same what is the same by another way: 0.1 + 0.2 and 0.2 + 0.1', async () => {
    const bench = await held('B1 1 V + R1 [0.1..1 step 0.1] 0.1 Ω + R2 [0.1..1 step 0.1] 0.2 Ω + R3 0.7 Ω');
    bench.board.settings = { R1: '0.2', R2: '0.1' };
    await bench.settled();
    expect(rows(bench)[4]![2]).to.equal('1.00 A the same');
  });

  it('finds decimals the same where a curve is back where it was', async () => {
    const bench = await held('B1 5 V + R1 [100..1000] 150 Ω + LED1 2 V 20 mA');
    bench.board.set('R1', '700');
    await bench.settled();
    expect(rows(bench)[3]![2]).to.contain('fell by');
    bench.board.set('R1', '150');
    await bench.settled();
    expect(rows(bench)[3]![2]).to.equal('0.0200 A the same');
  });

  it('says that a current was turned round, and what was where there is nothing now', async () => {
    const bridge = await held('B1 [-6..6] 6 V + R1 12 Ω + A1');
    bridge.board.set('B1', '-6');
    await bridge.settled();
    expect(rows(bridge)[2]![2]).to.equal('0.500 A turned round');
    expect(rows(bridge)[3]![2]).to.equal('−0.500 A turned round, fell by 1.00 A');
    const open = await held('B1 6 V + S1 closed + R1 12 Ω; V1 across R1');
    open.board.set('S1', 'open');
    await open.settled();
    expect(rows(open)[3]![2]).to.equal('no current fell by 0.500 A, × 0');
  });

  it('keeps covered what is covered, and hidden what is hidden', async () => {
    const covered = await held(quayLine, { hide: 'readings' });
    covered.board.set('R1', '24');
    await covered.settled();
    expect(covered.all('[part=table]')).to.deep.equal([]);
    expect(covered.board.shadowRoot!.textContent).to.not.match(/rose|fell|the same/);
    const hidden = await held('B1 6 V + R1 [4..40] 12 Ω + R2 8 Ω hidden');
    expect(rows(hidden)[3]![3]).to.equal('?');
  });

  it('lists a circuit that is not drawn with its changes, in the table that there is', async () => {
    const bench = await boardWith(quayLine);
    bench.board.circuit = bridge();
    await bench.board.ready;
    bench.board.hold();
    await comparing(bench);
    bench.board.set('R1', 'broken');
    await bench.settled();
    expect(bench.all('[part=table]').length).to.equal(1);
    expect(rows(bench).flat().join()).to.contain('fell by').and.contain('rose by');
  });

  it('is heard once when it is held, and once when a change has settled', async () => {
    const voice = (): string => document.querySelector('[data-rheolet-voice]')?.textContent ?? '';
    const bench = await boardWith(quayLine);
    await aTimeout(600); // what other tests have to say
    bench.button('Hold').click();
    await comparing(bench);
    await aTimeout(600);
    expect(voice()).to.equal('Readings held.');
    bench.board.set('R1', '24');
    await aTimeout(600);
    expect(voice().replace(/\s/g, ' ')).to.equal(
      'A1, 1.00 amperes, fell by 0.250 amperes, × 0.800. A2, 0.750 amperes, the same.',
    );
  });

  for (const scheme of ['light', 'dark'] as const)
    it(`without a finding of axe, ${scheme}`, async () => {
      await emulateFeatures({ 'prefers-color-scheme': scheme });
      const bench = await held(quayLine);
      Object.assign(bench.board.parentElement!.style, { colorScheme: 'light dark', background: 'Canvas' });
      bench.board.set('R1', '24');
      await bench.settled();
      await expect(bench.board).to.be.accessible();
    });
});
