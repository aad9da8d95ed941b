import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { resistanceOf } from '../../../src/engine/circuit/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';

/** The resistance that a block's name tells, `R_(R1∥(R2+L1))`; undefined where it names but the first and the last. */
export function blockResistance(name: string, { components }: Circuit): Fraction | undefined {
  if (name.includes('…')) return undefined;
  const ids = name.slice(2).match(/[()+∥]|[^()+∥]+/g) ?? [];
  let next = 0;
  const item = (): Fraction => {
    const id = ids[next++];
    if (id !== '(')
      return (
        resistanceOf(components.find((one) => one.id === id) ?? { kind: 'wire', id: '', from: '', to: '' }) ??
        new Fraction(0)
      );
    let whole = item();
    const sign = ids[next];
    while (ids[next] !== ')') {
      next++;
      const part = item();
      whole = sign === '+' ? whole.add(part) : whole.inverse().add(part.inverse()).inverse();
    }
    next++;
    return whole;
  };
  return item();
}
