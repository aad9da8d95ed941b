import { expect } from '@open-wc/testing';
import { parseCircuit, type Circuit } from '../../../src/engine/core.ts';
import { once } from '../../../src/components/link/index.ts';

describe('what follows from a circuit', () => {
  it('is worked out once for each circuit, also where it is nothing', () => {
    const asked: string[] = [];
    const first = once((circuit: Circuit) => {
      const id = circuit.components[0]?.id ?? '';
      asked.push(id);
      return id === 'R1' ? undefined : id;
    });
    const [one, other] = [parseCircuit('R1 5 Ω'), parseCircuit('R2 5 Ω')];
    expect([one, other, one, other].map(first)).to.deep.equal([undefined, 'R2', undefined, 'R2']);
    expect(asked).to.deep.equal(['R1', 'R2']);
  });
});
