import { expect } from '@open-wc/testing';
import { fetchComparison } from '../../../src/components/board/comparing.ts';
import { changeOn } from '../../../src/components/meter/instrument/held.ts';
import { instrumentOf, type Build } from '../../../src/components/meter/instrument/instrument.ts';
import { momentIn, plain, storeOf } from '../moment.ts';

/** What an ammeter has done while R1 was set from one resistance to another, under 6 V. */
function change(build: Partial<Build>, was: string, is: string, course = ''): readonly string[] {
  const store = storeOf('B1 6 V + A1 + R1 12 Ω + S1 closed', { course });
  store.set('R1', was);
  store.hold();
  store.set('R1', is);
  const moment = momentIn(store);
  const instrument = instrumentOf(
    moment.start,
    { range: '', resolution: '', face: '', unit: '', ...build },
    'I_A1',
  );
  const made = changeOn(moment, 'I_A1', { as: 'signed' }, instrument, 'A');
  return made ? [plain(made.text), plain(made.spoken), made.mark] : [];
}

describe('what a meter’s reading has done since it was held', () => {
  before(fetchComparison);

  for (const [what, build, was, is, text, spoken, mark] of [
    [
      'of any value, where it has neither range nor steps',
      {},
      '12',
      '24',
      'fell by 0.250 A, × 0.500',
      'fell by 0.250 amperes, × 0.500',
      '▼',
    ],
    [
      'in the steps in which it reads',
      { range: '600 mA', resolution: '0.02 A' },
      '12',
      '19',
      'fell by 180 mA, × 0.640',
      'fell by 180 milliamperes, × 0.640',
      '▼',
    ],
    [
      'of a needle in half divisions',
      { range: '1 A', face: 'needle' },
      '24',
      '12',
      'rose by 0.25 A, × 2.00',
      'rose by 0.25 amperes, × 2.00',
      '▲',
    ],
    [
      'less than the step of 3½ digits',
      { range: '1 A' },
      '12',
      '12.001',
      'fell by less than 0.001 A',
      'fell by less than 0.001 amperes',
      '▼',
    ],
    [
      'less than the step that the page asks for',
      { resolution: '0.1 A' },
      '12',
      '13',
      'fell by less than 0.1 A',
      'fell by less than 0.1 amperes',
      '▼',
    ],
    ['nothing', { range: '1 A' }, '12', '12', 'the same', 'the same', '='],
    [
      'that it lay beyond its range, of which there is no number',
      { range: '0.4 A' },
      '12',
      '24',
      'was overload',
      'was more than 0.4 amperes',
      '',
    ],
    [
      'what it read before it went beyond its range',
      { range: '0.4 A' },
      '24',
      '12',
      'was 0.250 A',
      'was 0.250 amperes',
      '',
    ],
  ] as const)
    it(`is told ${what}`, () => {
      expect(change(build, was, is)).to.deep.equal([text, spoken, mark]);
    });

  it('is not told from beyond its range to beyond it: both are “overload”', () => {
    expect(change({ range: '0.1 A' }, '12', '24')).to.deep.equal([]);
  });

  it('is told with the decimal sign of the course', () => {
    expect(change({ range: '1 A', face: 'needle' }, '24', '12', 'comma')[0]).to.equal(
      'rose by 0,25 A, × 2,00',
    );
  });

  it('is told of a reading at the very end of its range as of any other', () => {
    expect(change({ range: '0.5 A' }, '24', '12')[0]).to.equal('rose by 0.250 A, × 2.00');
  });
});
