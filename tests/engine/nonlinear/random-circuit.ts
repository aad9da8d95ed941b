import fc from 'fast-check';
import { circuitFrom, type Circuit } from '../../../src/engine/circuit/index.ts';

const ohms = fc.constantFrom('0.5', '4.7', '12', '220', '10000', '1e6');
const part = fc.oneof(
  fc.record({ kind: fc.constant('resistor'), resistance: ohms }),
  fc.record({
    kind: fc.constant('supply'),
    emf: fc.constantFrom('1.5', '6', '-9', '24'),
    internalResistance: ohms,
  }),
  fc.record({ kind: fc.constant('source'), current: fc.constantFrom('0.02', '-0.005', '1') }),
  fc.record({ kind: fc.constant('diode'), forwardVoltage: fc.constantFrom('0.3', '0.7') }),
  fc.record({ kind: fc.constant('led'), forwardVoltage: fc.constantFrom('1.6', '3.2') }),
  fc.record({
    kind: fc.constant('lamp'),
    ratedVoltage: fc.constantFrom('2.5', '12'),
    ratedCurrent: fc.constantFrom('0.06', '2'),
    filament: fc.constant(true),
  }),
  fc.record({ kind: fc.constant('ammeter') }),
);

/** Any graph of up to six nodes: bridges, loops of one, dead ends; a supply with some ohms inside, and at least one curve. */
export const curvedCircuits: fc.Arbitrary<Circuit> = fc
  .array(
    fc.tuple(
      part,
      fc.nat({ max: 5 }),
      fc.nat({ max: 5 }),
      fc.constantFrom(undefined, undefined, undefined, 'broken', 'bridged'),
    ),
    {
      minLength: 2,
      maxLength: 14,
    },
  )
  .map((list) =>
    circuitFrom({
      version: 1,
      components: [
        { id: 'B0', kind: 'supply', from: '0', to: '1', emf: 6, internalResistance: 1 },
        { id: 'LED0', kind: 'led', from: '0', to: '2' },
        ...list.map(([fields, from, to, condition], index) => ({
          id: `X${index + 1}`,
          from: `${from}`,
          to: `${to}`,
          ...fields,
          ...(condition && { condition }),
        })),
      ],
    }),
  );
