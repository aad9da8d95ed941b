import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { solve, solveExact } from '../../../src/engine/solve/index.ts';

/** What is remarked of a circuit that carries no current, all of it or a part: codes with their ids. */
const rows: readonly (readonly [what: string, circuit: string, remarks: readonly string[]])[] = [
  ['a lamp in a loop that is whole', 'B1 6 V + L1 6 Ω', []],
  ['an open switch', 'B1 6 V + S1 open + L1 6 Ω', ['open loop: S1']],
  ['two open switches, both in the way', 'B1 6 V + S1 open + S2 open + L1 6 Ω', ['open loop: S1 S2']],
  [
    'two open switches, either of which would do',
    'B1 6 V + (S1 open ∥ S2 open) + L1 6 Ω',
    ['open loop: S1 S2'],
  ],
  ['an open switch that a closed one bridges', 'B1 6 V + (S1 open ∥ S2 closed) + L1 6 Ω', []],
  ['an open switch across a lamp', 'B1 6 V + L1 6 Ω + (S1 open ∥ L2 6 Ω)', []],
  ['a lamp taken out of the only loop', 'B1 6 V + L1 6 Ω broken', ['open loop: L1', 'broken: L1']],
  ['a lamp taken out of one of two branches', 'B1 6 V + (L1 6 Ω broken ∥ L2 6 Ω)', ['broken: L1']],
  ['a supply taken out', 'B1 6 V broken + L1 6 Ω', ['open loop: B1', 'broken: B1']],
  [
    'nothing that drives a piece apart',
    'B1 6 V @a–@b; L1 6 Ω @a–@b; L2 6 Ω @c–@d; L3 6 Ω @c–@d',
    ['cut off: L2 L3'],
  ],
  [
    'a piece that an open switch joins',
    'B1 6 V @a–@b; L1 6 Ω @a–@b; S1 open @a–@c; L2 6 Ω @c–@d; L3 6 Ω @c–@d',
    ['cut off: L2 L3'],
  ],
  // What is secretly broken is not to be given away by what is said of it.
  ['a secret fault in the only loop', 'B1 6 V + L1 6 Ω secretly broken', ['open loop:']],
  [
    'a piece that secret faults cut off',
    'B1 6 V @a–@b; L1 6 Ω @a–@b; R1 1 Ω secretly broken @a–@c; L2 6 Ω @c–@d; L3 6 Ω @c–@d; R2 1 Ω secretly broken @d–@b',
    [],
  ],
];

void describe('what carries no current', () => {
  for (const [what, circuit, remarks] of rows)
    void it(`is told as it is drawn: ${what}`, () => {
      const drawn = parseCircuit(circuit);
      for (const solution of [solve(drawn), solveExact(drawn)])
        assert.deepEqual(
          solution.remarks
            .filter(({ code }) => ['open loop', 'cut off', 'broken'].includes(code))
            .map(({ code, ids }) => `${code}: ${ids.join(' ')}`.trim()),
          remarks,
        );
    });
});
