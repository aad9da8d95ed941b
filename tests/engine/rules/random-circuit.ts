import fc from 'fast-check';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import {
  circuit,
  intact,
  intactCircuit,
  letters,
  positive,
  realSupply,
  resistor,
} from '../solve/random-circuit.ts';
import { plant, shape } from '../topology/planted.ts';

/** Series and parallel to any depth, mostly resistors, now and then anything else that is intact. */
const parts = fc
  .tuple(
    shape,
    fc.nat(),
    fc.array(fc.oneof({ weight: 5, arbitrary: resistor() }, { weight: 2, arbitrary: intact() }), {
      minLength: 60,
      maxLength: 60,
    }),
    fc.array(fc.nat(9), { minLength: 60, maxLength: 60 }),
  )
  .map(([planted, seed, kinds, hidden]) =>
    plant(planted, seed).components.map(({ from, to }, index) => {
      const kind = kinds[index % kinds.length] ?? { kind: 'wire' };
      const id = `${letters[kind.kind] ?? ''}${index + 1}`;
      return { ...kind, id, from, to, ...(hidden[index % hidden.length] === 0 && { hidden: true }) };
    }),
  )
  .filter(({ length }) => length <= 25);

/** Circuits of every sort: trees with a supply, networks without one, and graphs of any shape. Some have faults or are open. */
export const random: fc.Arbitrary<Circuit> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc
      .tuple(realSupply(positive), parts)
      .map(([kind, rest]) => circuit([{ ...kind, id: 'B0', from: 'p', to: 'n' }, ...rest])),
  },
  {
    weight: 1,
    arbitrary: parts.map((list) => {
      const passive = list.filter(({ kind }) => kind !== 'supply' && kind !== 'source');
      const ends = { kind: 'resistor', resistance: '7', id: 'R0', from: 'p', to: 'n' };
      return circuit([...passive, ends], ['p', 'n']);
    }),
  },
  { weight: 4, arbitrary: intactCircuit },
);
