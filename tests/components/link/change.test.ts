import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { parseCircuit, withValue, type Circuit } from '../../../src/engine/index.ts';
import { changesOf, type ChangeDetail } from '../../../src/components/link/index.ts';

const start = parseCircuit('B1 6 V r 0.5 Ω + S1 closed + R1 12 Ω + L1 8 Ω + T1 10 kΩ; at 5 °C');
const after = (id: string, setting: string, from: Circuit = start): Circuit => withValue(from, id, setting);
const rows = (changes: readonly ChangeDetail[]): string[] =>
  changes.map(({ quantity, value, text, unit }) =>
    [quantity, value, text.replace(/\s/g, ' '), unit].join(' '),
  );

describe('what an event says of a change', () => {
  for (const [id, setting, said] of [
    ['R1', '20', ['R_R1 20 20 Ω Ω']],
    ['R1', '1/3', ['R_R1 0.3333333333333333 1/3 Ω Ω']],
    ['B1', '4.5', ['E_B1 4.5 4.5 V V']],
    ['B1', 'r 2', ['r_B1 2 2.0 Ω Ω']],
    ['B1', '4 r 2', ['E_B1 4 4 V V', 'r_B1 2 2.0 Ω Ω']],
    ['S1', 'open', [' 0 open ']],
    ['L1', 'broken', [' 1 broken ']],
    ['L1', 'bridged', [' 1 bridged ']],
    ['S1', 'open bridged', [' 0 open ', ' 1 bridged ']],
    ['R1', '20 broken', ['R_R1 20 20 Ω Ω', ' 1 broken ']],
    ['R1', '12 intact', []],
    ['temperature', '-5.5', ['temperature -5.5 −5.5 °C °C']],
    ['temperature', '5', []],
    ['light', '200', ['light 200 200 lx lx']],
    ['light', '10', []],
  ] as const)
    it(`${id} set to ${setting}: ${said.join('; ') || 'nothing'}`, () => {
      const changes = changesOf('quay', start, after(id, setting));
      for (const change of changes) expect([change.board, change.id]).to.deep.equal(['quay', id]);
      expect(rows(changes)).to.deep.equal(said);
    });

  for (const [line, id, setting, said] of [
    ['B1 6 V + S1 open + R1 12 Ω', 'S1', 'closed', ' 1 closed '],
    ['B1 6 V + push S1 + R1 12 Ω', 'S1', 'closed', ' 1 closed '],
    ['I1 [0..2] 0.5 A + R1 12 Ω', 'I1', '1.5', 'I_I1 1.5 1.5 A A'],
    ['B1 6 V + R1 12 Ω broken', 'R1', 'intact', ' 0 intact '],
    ['B1 6 V + R1 12 Ω broken', 'R1', 'bridged', ' 1 bridged '],
  ] as const)
    it(`of ${line}, ${id} set to ${setting}`, () => {
      const circuit = parseCircuit(line);
      expect(rows(changesOf('quay', circuit, after(id, setting, circuit)))).to.deep.equal([said]);
    });

  it('a value keeps the prefix that it was written with', () => {
    const harbour = parseCircuit('B1 6 V + R1 4k7');
    expect(rows(changesOf('', harbour, after('R1', '10000', harbour)))).to.deep.equal([
      'R_R1 10000 10.0 kΩ Ω',
    ]);
  });

  it('an internal resistance that was none was 0 Ω', () => {
    const harbour = parseCircuit('B1 6 V + R1 12 Ω');
    const aged = after('B1', 'r 2', harbour);
    expect(rows(changesOf('', harbour, aged))).to.deep.equal(['r_B1 2 2 Ω Ω']);
    expect(rows(changesOf('', aged, harbour))).to.deep.equal(['r_B1 0 0 Ω Ω']);
  });

  it('back is said where forth was said, and of no change nothing; what is farther on in the circuit is said later', () => {
    const sets = fc.subarray([
      ['B1', '3 r 1'],
      ['S1', 'open'],
      ['R1', '20 broken'],
      ['L1', 'bridged'],
      ['temperature', '40'],
      ['light', '0.1'],
    ] as const);
    fc.assert(
      fc.property(sets, (settings) => {
        const is = settings.reduce((circuit, [id, setting]) => after(id, setting, circuit), start);
        const [forth, back] = [changesOf('', start, is), changesOf('', is, start)];
        expect([...new Set(forth.map(({ id }) => id))]).to.deep.equal(settings.map(([id]) => id));
        expect(back.map(({ id, quantity }) => [id, quantity])).to.deep.equal(
          forth.map(({ id, quantity }) => [id, quantity]),
        );
        expect(changesOf('', is, is)).to.deep.equal([]);
      }),
    );
  });
});
