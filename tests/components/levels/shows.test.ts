import { expect, nextFrame } from '@open-wc/testing';
import { settled } from '../beside-board.ts';
import { bench, fall, group, heard, pump, quay } from './bench.ts';

describe('height is potential', () => {
  it('drops round a loop add up to the lift, in pixels', async () => {
    const made = await bench(quay);
    const [lift, first, second] = ['B1', 'R1', 'R2'].map((id) => fall(made, id));
    expect(lift).to.be.greaterThan(150);
    expect(first! + second!).to.be.closeTo(lift!, 0.15);
    expect(first! / lift!).to.be.closeTo(3 / 7, 0.001);
  });

  it('branches side by side fall between the same two heights, and so does a voltmeter across them', async () => {
    const made = await bench(quay);
    const ends = ['R2', 'L1', 'V1'].map((id) => {
      const { y, height } = group(made, id).querySelector<SVGPathElement>('.step')!.getBBox();
      return `${y} ${height}`;
    });
    expect(new Set(ends).size).to.equal(1);
  });

  it('a height can be read from the axis: a round volt stands at its mark', async () => {
    const made = await bench(pump);
    const marks = made.all('.mark').map((mark) => [Number(mark.textContent), Number(mark.getAttribute('y'))]);
    const [bottom, top] = [marks[0]!, marks.at(-1)!];
    expect(bottom[0]).to.equal(0);
    const pixels = (bottom[1]! - top[1]!) / (top[0]! - bottom[0]!);
    expect(fall(made, 'R2')).to.be.closeTo(8 * pixels, 0.15);
    const { y, height } = group(made, 'R2').querySelector<SVGPathElement>('.step')!.getBBox();
    expect(y + height).to.be.closeTo(bottom[1]!, 0.15);
  });

  it('in words: a lift, drops, and what does not drop', async () => {
    const made = await bench('B1 12 V + A1 + R1 4 Ω + R2 8 Ω');
    expect(heard(made)).to.deep.equal([
      'B1: a lift of 12.0 volts, from 0 volts to 12.0 volts',
      'A1: no drop, at 12.0 volts',
      'R1: a drop of 4.00 volts, from 12.0 volts to 8.00 volts',
      'R2: a drop of 8.00 volts, from 8.00 volts to 0 volts',
    ]);
    expect(made.texts('.value')).to.deep.equal(['12.0 V', '0 V', '4.00 V', '8.00 V']);
  });

  it('a supply that is being charged is a drop', async () => {
    const made = await bench('B1 9 V + R1 3 Ω + B2 3 V reversed');
    expect(heard(made)[2]).to.equal('B2: a drop of 3.00 volts, from 3.00 volts to 0 volts');
  });

  it('an open switch takes the whole drop, drawn broken because no current flows', async () => {
    const made = await bench('B1 6 V + R1 4 Ω + S1 open');
    expect(fall(made, 'S1')).to.equal(fall(made, 'B1'));
    expect(made.all('.still').map(({ dataset }) => dataset['id'])).to.deep.equal(['R1', 'S1']);
  });

  it('a bridge too', async () => {
    const made = await bench('B1 6 V + ((R1 1 Ω + @p + R2 2 Ω) ∥ (R3 2 Ω + @q + R4 1 Ω)); R5 3 Ω @p–@q');
    expect(fall(made, 'R1') + fall(made, 'R2')).to.be.closeTo(fall(made, 'B1'), 0.15);
    expect(fall(made, 'R1') + fall(made, 'R5')).to.be.closeTo(fall(made, 'R3'), 0.15);
  });
});

describe('the levels keep up with what moves', () => {
  it('in every frame, on an axis that stays', async () => {
    const made = await bench(pump);
    const marks = made.texts('.mark').join(' ');
    const seen = new Set<number>();
    for (let ohms = 5; ohms <= 14; ohms += 1) {
      made.board.move('R1', String(ohms));
      await nextFrame();
      await made.element.updateComplete;
      seen.add(fall(made, 'R1'));
    }
    expect(seen.size).to.be.within(9, 10);
    expect(made.texts('.mark').join(' ')).to.equal(marks);
    made.board.set('R1', '8');
    await settled();
    expect(fall(made, 'R1')).to.equal(fall(made, 'R2'));
  });

  it('without making anything anew', async () => {
    const made = await bench(pump);
    const before = made.all('*');
    made.board.move('R1', '9');
    await settled();
    const after = made.all('*');
    expect(after.length).to.equal(before.length);
    expect(after.every((each, place) => each === before[place])).to.equal(true);
  });

  it('and what is held stands beside it, broken, until it is let go', async () => {
    const made = await bench(pump);
    const line = (name: string): string | null => made.all(`.${name}`)[0]!.getAttribute('d');
    const before = line('lines');
    expect(line('held')).to.equal('');
    made.board.hold();
    made.board.set('R1', '16');
    await settled();
    expect(line('held')).to.equal(before);
    expect(line('lines')).to.not.equal(before);
    made.board.release();
    await settled();
    expect(line('held')).to.equal('');
  });
});
