import fc from 'fast-check';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { build, type Leaf, type Spec } from './build.ts';

/** How a random circuit is put together: a number is a component, a list is in series and in parallel by turns. */
type Shape = number | readonly Shape[];

const { whole } = fc.letrec<{ shape: Shape; whole: Shape }>((tie) => ({
  shape: fc.oneof(
    { maxDepth: 4, depthSize: 'medium' },
    { weight: 3, arbitrary: fc.nat({ max: 4095 }) },
    { weight: 2, arbitrary: fc.array(tie('shape'), { minLength: 2, maxLength: 4 }) },
  ),
  whole: fc.array(tie('shape'), { minLength: 1, maxLength: 10, size: 'medium' }),
}));

const names = ['', '', '', 'fog', 'quay', 'harbour', 'north'];
const texts = ['1', '12', '4.75', '220', '0.005', '1/3', '68000'];

const kinds = [
  'resistor',
  'lamp',
  'switch',
  'ammeter',
  'voltmeter',
  'wire',
  'ranged',
  'resistor',
  'led',
  'diode',
  'thermistor',
  'ldr',
  'fuse',
  'push',
  'heater',
  'motor',
  'source',
  'supply',
] as const;

function pick<T>(list: readonly T[], by: number): T {
  const item = list[by % list.length];
  if (item === undefined) throw new RangeError('an empty list');
  return item;
}

/** A component whose kind, label and values follow from a number; no supply in an open network. */
export function part(seed: number, count: number, closed: boolean): Leaf {
  const kind = pick(closed ? kinds : kinds.slice(0, -2), seed);
  const id = (letter: string): string => `${letter}${pick(names, seed >> 3)}${count}`;
  const value = pick(texts, seed >> 6);
  const hidden = seed % 13 === 0 ? { hidden: true } : {};
  switch (kind) {
    case 'resistor':
      return { id: id('R'), kind, fields: { resistance: value, ...hidden } };
    case 'ranged': {
      const range = { min: '4', max: pick(['40', '2000'], seed >> 6), step: pick(['1', '0.5'], seed >> 9) };
      return { id: id('R'), kind: 'resistor', fields: { resistance: '12', range } };
    }
    case 'lamp':
      return { id: id('L'), kind, fields: { ratedVoltage: value, ratedPower: '3', ...hidden } };
    case 'switch':
      return { id: id('S'), kind, fields: { closed: (seed >> 6) % 4 > 0 } };
    case 'supply':
      return {
        id: id('B'),
        kind,
        fields: {
          emf: value,
          internalResistance: '0.5',
          form: pick(['cell', 'battery', 'supply'], seed >> 9),
        },
      };
    case 'source': {
      const range = { min: 0, max: '0.5', step: '0.01' };
      return { id: id('I'), kind, fields: (seed >> 9) % 2 ? { current: '0.25', range } : { current: value } };
    }
    case 'led':
    case 'diode':
      return { id: id(kind === 'led' ? 'LED' : 'D'), kind, fields: { forwardVoltage: value, ...hidden } };
    case 'thermistor':
    case 'ldr':
    case 'heater':
    case 'motor':
      return {
        id: id(kind === 'ldr' ? 'LDR' : kind.charAt(0).toUpperCase()),
        kind,
        fields: { resistance: value },
      };
    case 'fuse':
      return { id: id('F'), kind, fields: { ratedCurrent: value, blown: (seed >> 6) % 3 === 0 } };
    case 'push':
      return { id: id('S'), kind, fields: { closed: (seed >> 6) % 2 > 0 } };
    case 'ammeter':
      return { id: id('A'), kind, fields: { resistance: '0.1' } };
    case 'voltmeter':
      return { id: id('V'), kind, fields: { resistance: '100000' } };
    case 'wire':
      return { id: id('W'), kind };
  }
}

function specOf(shape: Shape, inSeries: boolean, closed: boolean, taken: { count: number }): Spec {
  if (typeof shape === 'number') return part(shape, ++taken.count, closed);
  const parts = shape.map((each) => specOf(each, !inSeries, closed, taken));
  return inSeries ? { series: parts } : { parallel: parts };
}

const leavesOf = (shape: Shape): number =>
  typeof shape === 'number' ? 1 : shape.reduce<number>((sum, each) => sum + leavesOf(each), 0);

function circuitOf(shape: Shape, closed: boolean): Circuit {
  const spec = specOf(shape, true, closed, { count: 0 });
  if (!closed) return build(spec);
  const parts = 'series' in spec ? spec.series : [spec];
  return build({
    series: [{ id: 'B0', kind: 'supply', fields: { emf: '12', internalResistance: '1' } }, ...parts],
  });
}

/** Series–parallel circuits of up to 41 components of every kind, closed or between two terminals. */
export const randomCircuit: fc.Arbitrary<Circuit> = fc
  .tuple(
    whole.filter((each) => leavesOf(each) <= 40),
    fc.boolean(),
  )
  .map(([each, closed]) => circuitOf(each, closed));
