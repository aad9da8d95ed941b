import { expect } from '@open-wc/testing';
import { componentOf } from '../../../src/components/control/component-of.ts';
import { parseCircuit, say, type Circuit, type Component } from '../../../src/engine/core.ts';

type Kind = 'resistor' | 'supply' | 'switch';

const found = (line: string, of: string, kind: Kind): string => {
  const circuit: Circuit = parseCircuit(line);
  const may = circuit.components.filter((each): each is Component => each.kind === kind);
  const one = componentOf(circuit, of, kind, may);
  return 'code' in one ? say(one) : one.id;
};

const quay = 'B1 6 V + R1 12 Ω + R2 8 Ω + S1 open + L1 6 Ω';

describe('the component that a control sets', () => {
  for (const [of, kind, wanted] of [
    ['R1', 'resistor', 'R1'],
    ['R2', 'resistor', 'R2'],
    ['', 'supply', 'B1'],
    ['B1', 'supply', 'B1'],
    ['', 'switch', 'S1'],
  ] as const)
    it(`${of || 'the only one'} of kind ${kind} is ${wanted}`, () => {
      expect(found(quay, of, kind)).to.equal(wanted);
    });

  it('is none where several may be meant: they are named', () => {
    const sentence = found(quay, '', 'resistor');
    expect(sentence).to.contain('R1').and.to.contain('R2');
    expect(sentence).to.match(/^[A-Z].*\.$/);
  });

  it('is none where the label is of no component: the nearest is named', () => {
    expect(found(quay, 'R3', 'resistor')).to.match(/R3.*R[12]/);
    expect(found(quay, 'Rl', 'resistor')).to.contain('Rl');
  });

  it('is none where the label is of something else, even if only one could be set', () => {
    const sentence = found(quay, 'L1', 'switch');
    expect(sentence).to.not.equal('S1');
    expect(sentence).to.contain('L1').and.to.contain('S1');
  });

  it('is none in a circuit that has nothing of the kind', () => {
    for (const kind of ['supply', 'switch'] as const) {
      const sentence = found('R1 4 Ω + R2 8 Ω', '', kind);
      expect(sentence).to.match(/^[A-Z].*\.$/);
      expect(sentence).to.not.match(/undefined|null|\bor\s*\./);
    }
  });

  it('is found by its whole label, small and large letters told apart', () => {
    expect(found(quay, 'r1', 'resistor')).to.not.equal('R1');
    expect(found(quay, 'R', 'resistor')).to.not.equal('R1');
  });
});
