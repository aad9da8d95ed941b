import fc from 'fast-check';
import { circuitFrom, type Circuit } from '../../../src/engine/circuit/index.ts';

const conditions = fc.constantFrom(undefined, 'broken', 'bridged');
const tenths = fc.integer({ min: 0, max: 400 }).map((value) => `${value}/10`);
const kinds = fc.oneof(
  fc.record({ kind: fc.constant('resistor'), resistance: tenths }),
  fc.record({
    kind: fc.constant('resistor'),
    resistance: tenths,
    range: fc.constant({ min: 0, max: 40, step: '0.1' }),
  }),
  fc.record({
    kind: fc.constant('supply'),
    emf: tenths,
    form: fc.constantFrom(undefined, 'cell', 'battery', 'supply'),
  }),
  fc.record({
    kind: fc.constant('supply'),
    emf: tenths,
    internalResistance: tenths,
    range: fc.constant({ min: -40, max: 40, step: '0.1' }),
    internalRange: fc.constant({ min: 0, max: 50, step: '0.05' }),
  }),
  fc.record({
    kind: fc.constant('source'),
    current: tenths,
    range: fc.constantFrom(undefined, { min: -40, max: 40, step: '0.1' }),
  }),
  fc.record({ kind: fc.constant('lamp'), resistance: fc.constant(8) }),
  fc.record({ kind: fc.constantFrom('heater', 'motor'), resistance: fc.constant(8) }),
  fc.record({
    kind: fc.constant('lamp'),
    ratedVoltage: fc.constant(6),
    ratedPower: fc.constant('1.5'),
    filament: fc.boolean(),
  }),
  fc.record({ kind: fc.constantFrom('diode', 'led'), forwardVoltage: fc.constantFrom(undefined, '1.8') }),
  fc.record({ kind: fc.constantFrom('thermistor', 'ldr'), resistance: fc.constant(1000) }),
  fc.record({ kind: fc.constant('fuse'), ratedCurrent: fc.constant(2), blown: fc.boolean() }),
  fc.record({ kind: fc.constantFrom('switch', 'push'), closed: fc.boolean() }),
  fc.record({ kind: fc.constantFrom('ammeter', 'voltmeter', 'wire') }),
);

/** A circuit of a few components of all kinds, its labels X1, X2, …, some broken and some bridged. */
export const circuits: fc.Arbitrary<Circuit> = fc
  .array(fc.tuple(kinds, conditions), { minLength: 1, maxLength: 6 })
  .map((list) => {
    const components = list.map(([fields, condition], index) => {
      const ends = { id: `X${index + 1}`, from: `${index}`, to: `${index + 1}` };
      return { ...ends, ...fields, ...(condition && { condition }) };
    });
    const supplied = list.some(([{ kind }]) => kind === 'supply' || kind === 'source');
    return circuitFrom({ version: 1, components, ...(!supplied && { terminals: ['0', '1'] }) });
  });
