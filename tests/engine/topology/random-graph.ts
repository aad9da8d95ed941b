import fc from 'fast-check';
import type { Component } from '../../../src/engine/circuit/index.ts';
import { resistor, supply } from './planted.ts';

/** Any circuit at all: a supply B1 between nodes 0 and 1, now and then a second, and resistors between any of a few nodes. */
export const randomGraph: fc.Arbitrary<readonly Component[]> = fc
  .array(
    fc.record({ from: fc.nat(5), to: fc.nat(5), driven: fc.nat(9), ohms: fc.integer({ min: 1, max: 30 }) }),
    {
      minLength: 1,
      maxLength: 12,
    },
  )
  .map((ends) => [
    supply('B1', '0', '1'),
    ...ends.map(({ from, to, driven, ohms }, index) =>
      driven === 0
        ? supply(`B${index + 2}`, `${from}`, `${to}`)
        : resistor(`R${index + 1}`, `${from}`, `${to}`, ohms),
    ),
  ]);
