import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { next, parseCircuit, type State } from '../../../src/engine/index.ts';

/** What blows, in its order, from a state in which some fuses have blown. */
const blown = (line: string, before: readonly string[] = []): readonly string[] => {
  const state: State = { blown: before };
  return next(parseCircuit(line), state, 1).blown;
};

/** A line, and the fuses that blow in it one after another: worked out by hand. */
const orders: readonly (readonly [what: string, line: string, order: readonly string[]])[] = [
  ['just at its rating', 'B1 6 V + F1 0.5 A + R1 12 Ω', []],
  ['a little above it', 'B1 6.001 V + F1 0.5 A + R1 12 Ω', ['F1']],
  [
    'the one that is furthest above comes last in the line',
    'B1 6 V + F1 2 A + F2 1 A + F3 0.5 A + R1 2 Ω',
    ['F3'],
  ],
  [
    'the one that is furthest above stands in the middle',
    'B1 6 V + F1 2 A + F2 0.5 A + F3 1 A + R1 2 Ω',
    ['F2'],
  ],
  [
    'of those that nothing limits, the smallest stands in the middle',
    'B1 6 V + F1 5 A + F2 3 A + F3 4 A',
    ['F2'],
  ],
  ['of those that nothing limits, the smallest stands first', 'B1 6 V + F1 3 A + F2 5 A + F3 4 A', ['F1']],
  ['as many times above, the smaller rating', 'B1 6 V + (F1 2 A + R1 1 Ω) ∥ (F2 1 A + R2 2 Ω)', ['F2', 'F1']],
  ['two supplies in contradiction', 'B1 6 V ∥ (B2 9 V + F1 5 A)', ['F1']],
  ['two supplies alike, which agree', 'B1 6 V ∥ (B2 6 V + F1 5 A)', []],
  [
    'three branches, one after another',
    'B1 6 V r 1 Ω + (F1 1 A + R1 1 Ω) ∥ (F2 1 A + R2 2 Ω) ∥ (F3 1 A + R3 4 Ω)',
    ['F1', 'F2', 'F3'],
  ],
];

void describe('fuses that may blow', () => {
  for (const [what, line, order] of orders)
    void it(`${what}: ${order.join(', then ') || 'none'}`, () => {
      assert.deepEqual(blown(line), order);
    });

  void it('are left out where they have blown, or are marked as blown', () => {
    const line = 'B1 6 V + (F1 1 A + R1 2 Ω) ∥ (F2 1 A + R2 3 Ω)';
    assert.deepEqual(blown(line), ['F1', 'F2']);
    assert.deepEqual(blown(line, ['F2']), ['F2', 'F1']);
    assert.deepEqual(blown(line, ['F1']), ['F1', 'F2']);
    assert.deepEqual(blown(line.replace('F1 1 A', 'F1 1 A blown')), ['F2']);
    assert.deepEqual(blown(line.replace('F1 1 A', 'F1 1 A broken')), ['F2']);
    assert.deepEqual(blown(line.replace('F1 1 A', 'F1 1 A 0.1 Ω bridged')), ['F2']);
  });

  void it('carry what a secret fault sends through them', () => {
    const line = 'B1 6 V + F1 1 A + R1 4 Ω + R2 4 Ω';
    assert.deepEqual(blown(line), []);
    assert.deepEqual(blown(line.replace('R2 4 Ω', 'R2 4 Ω secretly bridged')), ['F1']);
    assert.deepEqual(blown(line.replace('R2 4 Ω', 'R2 4 Ω secretly broken')), []);
    assert.deepEqual(
      blown(line.replace('R1 4 Ω + R2 4 Ω', 'R1 4 Ω secretly bridged + R2 4 Ω secretly bridged')),
      ['F1'],
    );
  });
});
