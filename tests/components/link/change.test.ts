import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { circuitFrom, withValue, type Component } from '../../../src/engine/index.ts';
import { changeOf, changesOf } from '../../../src/components/link/index.ts';

const { components } = circuitFrom({
  version: 1,
  components: [
    { id: 'B1', kind: 'supply', from: 'a', to: 'z', emf: '6', internalResistance: '1/2' },
    { id: 'S1', kind: 'switch', from: 'a', to: 'b', closed: true },
    { id: 'R1', kind: 'resistor', from: 'b', to: 'c', resistance: '12' },
    { id: 'L1', kind: 'lamp', from: 'c', to: 'z', resistance: '8' },
  ],
});
const after = (id: string, setting: string): readonly [Component, Component] => {
  const place = components.findIndex((each) => each.id === id);
  const [was, is] = [components[place], withValue({ components }, id, setting).components[place]];
  if (!was || !is) throw new Error(id);
  return [was, is];
};

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
  ] as const)
    it(`${id} set to ${setting}: ${said.join('; ') || 'nothing'}`, () => {
      const changes = changesOf('quay', ...after(id, setting));
      for (const change of changes) expect([change.board, change.id]).to.deep.equal(['quay', id]);
      const rows = changes.map(({ quantity, value, text, unit }) =>
        [quantity, value, text.replace(/\s/g, ' '), unit].join(' '),
      );
      expect(rows).to.deep.equal(said);
    });

  it('back is said where forth was said, and of no change nothing', () => {
    const set = fc.constantFrom(
      ...([
        'R1 20',
        'R1 20 broken',
        'B1 3 r 1',
        'S1 open',
        'L1 bridged',
        'S1 closed broken',
        'L1 intact',
      ] as const),
    );
    fc.assert(
      fc.property(set, (words) => {
        const [was, is] = after(words.slice(0, 2), words.slice(3));
        const [forth, back] = [changesOf('', was, is), changesOf('', is, was)];
        expect(back.map(({ quantity }) => quantity)).to.deep.equal(forth.map(({ quantity }) => quantity));
        expect(changesOf('', is, is)).to.deep.equal([]);
        for (const { quantity, text } of forth.filter((each) => each.quantity))
          expect(text).to.equal(changeOf('', is, quantity.startsWith('r')).text);
      }),
    );
  });
});
