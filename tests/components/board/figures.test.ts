import { expect } from '@open-wc/testing';
import { boardWith, drag, quayLine, text, type Bench } from './bench.ts';

/** How strongly each lamp glows, in the order of the circuit. */
const glows = (bench: Bench): number[] =>
  bench.all('.moving circle').map((disc) => Number(disc.getAttribute('fill-opacity')));

describe('lamps glow in the order of their power', () => {
  for (const [circuit, order] of [
    ['B1 6 V + L1 2 Ω + L2 4 Ω', [1, 0]], // in series the larger resistance takes more
    ['B1 6 V + (L1 2 Ω ∥ L2 4 Ω)', [0, 1]], // in parallel the smaller
    ['B1 6 V + L1 3 Ω + (L2 4 Ω ∥ L3 12 Ω)', [0, 1, 2]], // 1 A: 3 W; 3 V: 2.25 W and 0.75 W
  ] as const)
    it(circuit, async () => {
      const bench = await boardWith(circuit);
      const glow = glows(bench);
      const brightestFirst = [...glow.keys()].sort((a, b) => (glow[b] ?? 0) - (glow[a] ?? 0));
      expect(brightestFirst).to.deep.equal(order);
      expect(new Set(glow).size, 'no two alike').to.equal(order.length);
    });

  it('and a lamp that a switch cuts off is dark', async () => {
    const bench = await boardWith('B1 6 V + (L1 8 Ω ∥ (S1 closed + L2 8 Ω))');
    expect(glows(bench)[1]).to.be.greaterThan(0);
    bench.board.set('S1', 'open');
    await bench.settled();
    expect(glows(bench)[1]).to.equal(0);
    expect(glows(bench)[0]).to.be.greaterThan(0);
  });
});

describe('what stands beside a component is what it is set to', () => {
  /** The values as they are read, each id once. */
  const values = (bench: Bench): Record<string, string> =>
    Object.fromEntries(
      bench
        .all('[data-value]')
        .map((each) => [each.getAttribute('data-value') ?? '', text(each).replace(/\s/g, ' ')] as const),
    );

  for (const [circuit, id, moving, settled] of [
    ['B1 [0..12] 6 V + R1 12 Ω', 'B1', ['9', '9 V'], ['12', '12 V']],
    ['B1 6 V r [0..2] 0.5 Ω + R1 12 Ω', 'B1', ['r 1', '6 V, r 1.0 Ω'], ['r 2', '6 V, r 2.0 Ω']],
    ['B1 6 V + R1 12 Ω', 'B1', ['1.5', '1.5 V'], ['9 r 1', '9 V, r 1 Ω']],
    ['B1 6 V + R1 [4..40] 12 Ω ±5%', 'R1', ['20', '20 Ω, ±5 %'], ['4', '4 Ω, ±5 %']],
    ['B1 6 V + R1 [4..40] 12 Ω hidden', 'R1', ['20', '?'], ['4', '?']],
    ['B1 [0..12] 6 V hidden + R1 12 Ω', 'B1', ['9', '?'], ['12', '?']],
  ] as const)
    it(`${circuit}, ${id} moving to ${moving[0]} and set to ${settled[0]}`, async () => {
      const bench = await boardWith(circuit);
      bench.board.move(id, moving[0]);
      await new Promise((done) => setTimeout(done, 150));
      await bench.settled();
      expect(values(bench)[id]).to.equal(moving[1]);
      bench.board.set(id, settled[0]);
      await bench.settled();
      await bench.settled();
      expect(values(bench)[id]).to.equal(settled[1]);
    });

  it('also where a page sets what no slider turns', async () => {
    const bench = await boardWith('B1 6 V + R1 12 Ω');
    bench.board.set('R1', '20');
    await bench.settled();
    await bench.settled();
    expect(values(bench)).to.deep.equal({ B1: '6 V', R1: '20 Ω' });
  });
});

describe('the drawing stands still', () => {
  const boxes = (bench: Bench): string[] =>
    bench.all('text').map((each) => `${text(each)} ${each.getAttribute('x')} ${each.getAttribute('y')}`);

  it('while a slider moves, labels stay where they are', async () => {
    const bench = await boardWith(quayLine);
    const places = (): (string | null)[] => bench.all('text').map((each) => each.getAttribute('x'));
    const [before, wires] = [places(), bench.all('.wire').map((wire) => wire.getAttribute('d'))];
    for (const setting of [0, 7, 36]) {
      drag(bench.slider, setting, false);
      await bench.settled();
      expect(places()).to.deep.equal(before);
      expect(bench.all('.wire').map((wire) => wire.getAttribute('d'))).to.deep.equal(wires);
    }
  });

  it('a branch that a switch opens loses its ribbon; closed again, all is as before', async () => {
    const bench = await boardWith('B1 6 V + (R1 12 Ω ∥ (S1 closed + R2 6 Ω))');
    const [ribbons, labels] = [bench.ribbons, boxes(bench)];
    bench.board.set('S1', 'open');
    await bench.settled();
    expect(bench.ribbons.length).to.be.within(1, ribbons.length - 1);
    expect(boxes(bench)).to.deep.equal(labels);
    bench.board.set('S1', 'closed');
    await bench.settled();
    expect(bench.ribbons).to.equal(ribbons);
  });
});
