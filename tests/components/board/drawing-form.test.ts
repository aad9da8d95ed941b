import { expect } from '@open-wc/testing';
import { formOfDrawing } from '../../../src/components/board/drawing-form.ts';
import { drawSchematic, parseCircuit } from '../../../src/engine/core.ts';

const formOf = (line: string): string => formOfDrawing(parseCircuit(line));
const line = (quay: string, pump = '[4..40] 12 Ω', supply = '6 V'): string =>
  `B1 ${supply} + A1 + (R1 ${pump} ∥ (R2 ${quay} + L1 6 V 3 W))`;

describe('the form of a drawing', () => {
  it('is the same where resistances are written with as many digits, and so is the size', () => {
    expect(formOf(line('27 Ω'))).to.equal(formOf(line('10 Ω')));
    const sizes = ['27 Ω', '10 Ω', '99 Ω'].map((quay) => {
      const drawing = drawSchematic(parseCircuit(line(quay)), { width: 296 });
      return drawing.kind === 'drawing' && [drawing.width, drawing.height];
    });
    expect(sizes[0]).to.deep.equal(sizes[1]);
    expect(sizes[0]).to.deep.equal(sizes[2]);
  });

  for (const [what, other] of [
    ['another digit', line('100 Ω')],
    ['another prefix', line('27 kΩ')],
    ['a hidden value', line('27 Ω hidden')],
    ['another range', line('27 Ω', '[4..4000] 12 Ω')],
    ['no range', line('27 Ω', '12 Ω')],
    ['another supply', line('27 Ω', '[4..40] 12 Ω', '12 V')],
    ['a component taken out', line('27 Ω broken')],
    ['another arrangement', line('27 Ω').replace('∥', '+')],
    ['a labelled point', line('27 Ω').replace('A1 +', 'A1 + @A +')],
  ] as const)
    it(`is another with ${what}`, () => {
      expect(formOf(other)).not.to.equal(formOf(line('27 Ω')));
    });
});
