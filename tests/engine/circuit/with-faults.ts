import fc from 'fast-check';
import type { Circuit, Component, Condition } from '../../../src/engine/circuit/index.ts';

/** Circuits with something secretly wrong with some of their components, with one at least. */
export const withFaults = (circuits: fc.Arbitrary<Circuit>): fc.Arbitrary<Circuit> =>
  fc
    .tuple(
      circuits,
      fc.nat(),
      fc.array(fc.constantFrom<(Condition | undefined)[]>(undefined, undefined, 'broken', 'bridged'), {
        minLength: 15,
        maxLength: 15,
      }),
      fc.constantFrom<Condition[]>('broken', 'bridged'),
    )
    .map(([circuit, which, others, sure]) => ({
      ...circuit,
      components: circuit.components.map((each, place): Component => {
        const fault = place === which % circuit.components.length ? sure : others[place % others.length];
        return fault ? { ...each, fault } : each;
      }),
    }));
