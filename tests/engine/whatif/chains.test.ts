import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { parseCircuit, say, sensitivity, solveExact, withValue } from '../../../src/engine/index.ts';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { solutionOf } from './block-size.ts';

/** A question as teachers ask it, "what happens to … when the resistance of … rises?", and the chain that answers it. */
interface Question {
  readonly what: string;
  readonly circuit: string;
  readonly of: string;
  readonly by: string;
  readonly direction: 'rises' | 'falls' | 'stays the same';
  readonly chain: readonly string[];
}

// Common practice: each follows from R = V/I for the parts and for the whole, said one link after the other.
const questions: readonly Question[] = [
  {
    what: 'one resistor at an ideal supply',
    circuit: 'B1 6 V + R1 4 Ω',
    of: 'I_R1',
    by: 'R1',
    direction: 'falls',
    chain: [
      'The resistance of R1 rises.',
      'So the current through B1 falls.',
      'But the p.d. across R1 stays the same.',
      'So the current through R1 falls.',
    ],
  },
  {
    what: 'the current of the whole',
    circuit: 'B1 6 V + R1 4 Ω',
    of: 'I_total',
    by: 'R1',
    direction: 'falls',
    chain: ['The resistance of R1 rises.', 'So the current through B1 falls.'],
  },
  {
    what: 'a fog sensor gets dark in a divider',
    circuit: 'B1 6 V + LDR1 1 kΩ + R1 2 kΩ',
    of: 'V_LDR1',
    by: 'LDR1',
    direction: 'rises',
    chain: [
      'The resistance of LDR1 rises.',
      'So the current through B1 falls.',
      'So the p.d. across LDR1 rises.',
    ],
  },
  {
    what: 'the fixed resistor beside a fog sensor',
    circuit: 'B1 6 V + LDR1 1 kΩ + R1 2 kΩ',
    of: 'V_R1',
    by: 'LDR1',
    direction: 'falls',
    chain: [
      'The resistance of LDR1 rises.',
      'So the current through B1 falls.',
      'So the p.d. across R1 falls.',
    ],
  },
  {
    what: 'quay lights at a battery with something inside: one takes less, the other gets brighter',
    circuit: 'B1 6 V r 1 Ω + (L1 6 Ω ∥ L2 6 Ω)',
    of: 'I_L1',
    by: 'L2',
    direction: 'rises',
    chain: [
      'The resistance of L2 rises.',
      'So the resistance of L1 and L2 together rises.',
      'So the current through B1 falls.',
      'So the p.d. across L1 and L2 together rises.',
      'So the current through L1 rises.',
    ],
  },
  {
    what: 'the p.d. across the other quay light, once more than across both',
    circuit: 'B1 6 V r 1 Ω + (L1 6 Ω ∥ L2 6 Ω)',
    of: 'V_L1',
    by: 'L2',
    direction: 'rises',
    chain: [
      'The resistance of L2 rises.',
      'So the resistance of L1 and L2 together rises.',
      'So the current through B1 falls.',
      'So the p.d. across L1 and L2 together rises.',
      'So the p.d. across L1 rises.',
    ],
  },
  {
    what: 'a resistor before the quay lights',
    circuit: 'B1 6 V + R3 2 Ω + (L1 6 Ω ∥ L2 6 Ω)',
    of: 'V_R3',
    by: 'L2',
    direction: 'falls',
    chain: [
      'The resistance of L2 rises.',
      'So the resistance of L1 and L2 together rises.',
      'So the current through B1 falls.',
      'So the p.d. across R3 falls.',
    ],
  },
  {
    what: 'the current through the very branch that rises, against the p.d. across it',
    circuit: 'B1 6 V + R1 4 Ω + (R2 6 Ω ∥ R3 12 Ω)',
    of: 'I_R2',
    by: 'R2',
    direction: 'falls',
    chain: [
      'The resistance of R2 rises.',
      'So the resistance of R2 and R3 together rises.',
      'So the current through B1 falls.',
      'So the p.d. across R2 and R3 together rises.',
      'So the current through R2 falls.',
    ],
  },
  {
    what: 'two chains side by side: the one that changes',
    circuit: 'B1 6 V + (R1 2 Ω + R2 4 Ω) ∥ (R3 3 Ω + R4 3 Ω)',
    of: 'V_R2',
    by: 'R1',
    direction: 'falls',
    chain: [
      'The resistance of R1 rises.',
      'So the resistance of R1 and R2 together rises.',
      'So the resistance of R1, R2, R3 and R4 together rises.',
      'So the current through B1 falls.',
      'But the p.d. across R1, R2, R3 and R4 together stays the same.',
      'So the current through R1 and R2 falls.',
      'So the p.d. across R2 falls.',
    ],
  },
  {
    what: 'two chains side by side: the one that does not mind',
    circuit: 'B1 6 V + (R1 2 Ω + R2 4 Ω) ∥ (R3 3 Ω + R4 3 Ω)',
    of: 'V_R4',
    by: 'R1',
    direction: 'stays the same',
    chain: [
      'The resistance of R1 rises.',
      'So the resistance of R1 and R2 together rises.',
      'So the resistance of R1, R2, R3 and R4 together rises.',
      'So the current through B1 falls.',
      'But the p.d. across R1, R2, R3 and R4 together stays the same.',
      'So the current through R3 and R4 stays the same.',
      'So the p.d. across R4 stays the same.',
    ],
  },
  {
    what: 'a real voltmeter across the lower part of a divider',
    circuit: 'B1 6 V + R1 2 Ω + (R2 6 Ω ∥ V1 100 Ω)',
    of: 'V_V1',
    by: 'R1',
    direction: 'falls',
    chain: [
      'The resistance of R1 rises.',
      'So the current through B1 falls.',
      'So the p.d. across R2 and V1 together falls.',
      'So the p.d. across V1 falls.',
    ],
  },
  {
    what: 'a resistor whose p.d. is counted against the current',
    circuit: 'B1 6 V reversed + R1 4 Ω + R2 8 Ω',
    of: 'V_R2',
    by: 'R1',
    direction: 'rises',
    chain: [
      'The resistance of R1 rises.',
      'So the current through B1 falls.',
      'So the p.d. across R2 falls.',
      'V_R2 is counted the other way, so it is negative: as its size falls, it rises.',
    ],
  },
  {
    what: 'its own p.d., counted so',
    circuit: 'B1 6 V + R1 4 Ω reversed + R2 8 Ω',
    of: 'V_R1',
    by: 'R1',
    direction: 'falls',
    chain: [
      'The resistance of R1 rises.',
      'So the current through B1 falls.',
      'So the p.d. across R1 rises.',
      'V_R1 is counted the other way, so it is negative: as its size rises, it falls.',
    ],
  },
  {
    what: 'a p.d. counted so that stays the same',
    circuit: 'B1 6 V reversed + (R1 4 Ω ∥ R2 8 Ω)',
    of: 'I_R2',
    by: 'R1',
    direction: 'stays the same',
    chain: [
      'The resistance of R1 rises.',
      'So the resistance of R1 and R2 together rises.',
      'So the current through B1 falls.',
      'But the p.d. across R1 and R2 together stays the same.',
      'So the current through R2 stays the same.',
    ],
  },
  {
    what: 'a constant current through a chain',
    circuit: 'I1 2 A + R1 4 Ω + R2 6 Ω',
    of: 'V_R1',
    by: 'R1',
    direction: 'rises',
    chain: [
      'The resistance of R1 rises.',
      'But the current through I1 stays the same.',
      'So the p.d. across R1 rises.',
    ],
  },
  {
    what: 'a constant current that splits',
    circuit: 'I1 2 A + (R1 4 Ω ∥ R2 6 Ω)',
    of: 'I_R2',
    by: 'R1',
    direction: 'rises',
    chain: [
      'The resistance of R1 rises.',
      'So the resistance of R1 and R2 together rises.',
      'But the current through I1 stays the same.',
      'So the p.d. across R1 and R2 together rises.',
      'So the current through R2 rises.',
    ],
  },
  {
    what: 'an ideal voltmeter across what changes, which has no part in it',
    circuit: 'B1 6 V + R1 2 Ω + (R2 6 Ω ∥ R3 3 Ω ∥ V1)',
    of: 'V_V1',
    by: 'R3',
    direction: 'rises',
    chain: [
      'The resistance of R3 rises.',
      'So the resistance of R2 and R3 together rises.',
      'So the current through B1 falls.',
      'So the p.d. across R2 and R3 together rises.',
      'So the p.d. across V1 rises.',
    ],
  },
  {
    what: 'the total resistance, up from one of two in parallel',
    circuit: 'B1 6 V r 1 Ω + R1 4 Ω + (R2 6 Ω ∥ (R3 2 Ω + R4 4 Ω))',
    of: 'R_total',
    by: 'R4',
    direction: 'rises',
    chain: [
      'The resistance of R4 rises.',
      'So the resistance of R3 and R4 together rises.',
      'So the resistance of R2, R3 and R4 together rises.',
      'So the total resistance rises.',
    ],
  },
  {
    what: 'the resistance of the whole loop',
    circuit: 'B1 6 V r 1 Ω + (R1 4 Ω ∥ R2 4 Ω)',
    of: 'R_loop',
    by: 'R2',
    direction: 'rises',
    chain: ['The resistance of R2 rises.', 'So the resistance of the whole loop rises.'],
  },
  {
    what: 'the resistance between the ends of a network',
    circuit: 'R1 12 Ω ∥ (R2 4 Ω + R3 8 Ω)',
    of: 'R_total',
    by: 'R3',
    direction: 'rises',
    chain: [
      'The resistance of R3 rises.',
      'So the resistance of R2 and R3 together rises.',
      'So the total resistance rises.',
    ],
  },
  {
    what: 'a potentiometer beside a load, whose upper part decides',
    circuit: 'B1 6 V + potentiometer R1b 70 Ω + (potentiometer R1a 30 Ω ∥ R2 60 Ω)',
    of: 'R_total',
    by: 'R1a',
    direction: 'falls',
    chain: [
      'The contact slides: the resistance of R1a rises, and that of R1b falls by as much.',
      'So the resistance of R1a and R2 together rises.',
      'So the total resistance falls, though R1a alone would make it rise.',
    ],
  },
];

void describe('what happens when a resistance rises', () => {
  for (const { what, circuit, of, by, direction, chain } of questions)
    void it(`${what}: ${of} by ${by} ${direction}`, () => {
      const found = sensitivity(parseCircuit(circuit), of, by);
      assert.equal(found.direction, direction);
      assert.deepEqual(
        found.reasons.map((link) => say(link)),
        chain,
      );
    });

  void it('is told without a chain where no resistance of a component rises, and for a power', () => {
    for (const [of, by, direction] of [
      ['V_B1', 'r_B1', 'falls'],
      ['I_R1', 'B1', 'rises'],
      ['P_R1', 'R1', 'falls'],
      ['R_loop', 'r_B1', 'rises'],
    ] as const) {
      const found = sensitivity(parseCircuit('B1 6 V r 1 Ω + R1 5 Ω'), of, by);
      assert.deepEqual([found.direction, found.reasons], [direction, []], `${of} by ${by}`);
    }
  });
});

/** Series and parallel round a supply, no two resistances of a ratio that would leave anything in balance by chance. */
const nested = fc.letrec<{ part: (next: () => number) => string }>((tie) => ({
  part: fc.oneof(
    { maxDepth: 3 },
    fc.integer({ min: 1, max: 99 }).map((ohms) => (next: () => number) => `R${next()} ${ohms} Ω`),
    fc.tuple(fc.constantFrom(' + ', ' ∥ '), fc.array(tie('part'), { minLength: 2, maxLength: 3 })).map(
      ([sign, parts]) =>
        (next: () => number) =>
          `(${parts.map((part) => part(next)).join(sign)})`,
    ),
  ),
})).part;

const risen = (circuit: Circuit, id: string): Circuit => {
  const part = circuit.components.find((each) => each.id === id);
  assert.ok(part?.kind === 'resistor');
  return withValue(circuit, id, part.resistance.value.mul(new Fraction(11, 10)));
};

const sizes = {
  'so their resistance': 'R',
  'so the whole': 'R',
  'so the current': 'I',
  'so the p.d.': 'V',
} as const;

void it('says of every block on the way what it does, as found from the power that it takes', () => {
  let links = 0;
  fc.assert(
    fc.property(nested, fc.constantFrom('', ' r 2 Ω'), fc.nat(), fc.nat(), (build, inner, a, b) => {
      let count = 0;
      const circuit = parseCircuit(`B1 12 V${inner} + R0 5 Ω + ${build(() => (count += 1))}`);
      const [what, of] = [a, b].map((place) => `R${place % (count + 1)}`);
      assert.ok(what && of);
      const after = risen(circuit, what);
      const [old, now] = [solveExact(circuit), solveExact(after)].map((each) => solutionOf(circuit, each));
      assert.ok(old && now);
      for (const name of [`I_${of}`, `V_${of}`, 'R_total', 'R_loop'])
        for (const link of sensitivity(circuit, name, what).reasons) {
          if (link.code === 'this resistance rises') {
            assert.equal(link.data.id, what);
            continue;
          }
          // A resistor has no contact that slides.
          assert.ok(
            link.code === 'so their resistance' ||
              link.code === 'so the whole' ||
              link.code === 'so the current' ||
              link.code === 'so the p.d.',
          );
          const size: 'R' | 'I' | 'V' = sizes[link.code];
          const ids: readonly string[] = link.data.ids;
          const order: number = now(size, ids).compare(old(size, ids));
          const found: string = order > 0 ? 'rises' : order < 0 ? 'falls' : 'stays the same';
          assert.equal(link.data.change, found, `${size} of ${ids.join()} by ${what}`);
          assert.deepEqual(link.data.against, []);
          links += 1;
        }
    }),
    { numRuns: 40 },
  );
  assert.ok(links > 200, `${links}`);
});
