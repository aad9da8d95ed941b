import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { nearest } from '../../../src/engine/circuit/index.ts';

const letters = 'RLB12o_'.split('');
const word = fc.string({ unit: fc.constantFrom(...letters), minLength: 1, maxLength: 6 });

/** How many single changes lead from one word to the other, by trying all that one, two, three … changes lead to. */
function changes(from: string, to: string, most: number): number {
  let reached = new Set([from]);
  for (let steps = 0; steps <= most; steps++) {
    if (reached.has(to)) return steps;
    const next = new Set<string>();
    for (const each of reached)
      for (let at = 0; at <= each.length; at++) {
        const [before, after] = [each.slice(0, at), each.slice(at)];
        next.add(before + after.slice(1));
        for (const letter of new Set(to)) {
          next.add(before + letter + after);
          next.add(before + letter + after.slice(1));
        }
      }
    reached = next;
  }
  return Infinity;
}

describe('the nearest word', () => {
  it('is none further than half its letters, and none that is nearer is left out', () => {
    fc.assert(
      fc.property(word, fc.array(word, { maxLength: 4 }), (found, words) => {
        const best = nearest(found, words);
        // Words of up to six letters: two changes are tried out, and a third would already be half of all.
        const near = words.map((each) => ({
          each,
          steps: changes(found.toLowerCase(), each.toLowerCase(), 2),
        }));
        const able = near.filter(({ each, steps }) => steps <= each.length / 2);
        const least = Math.min(...able.map(({ steps }) => steps));
        if (able.length > 0) {
          const first = able.find(({ steps }) => steps === least)?.each;
          assert.equal(best, first, `${found} among ${words.join()}`);
        } else if (best) {
          // More than two changes, which only a word of six letters may be away.
          assert.ok(best.length >= 6, `${found}: ${best}`);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('is the word itself where it is there, in small letters or large', () => {
    fc.assert(
      fc.property(word, fc.array(word), (found, words) => {
        assert.equal(nearest(found, [found, ...words]), found);
        assert.equal(nearest(found.toLowerCase(), [found]), found);
      }),
    );
  });

  for (const [found, words, wanted] of [
    ['R11', ['R1', 'R2', 'B1'], 'R1'],
    ['resitor', ['resistor', 'reversed'], 'resistor'],
    ['I_totl', ['I_total', 'R_total'], 'I_total'],
    ['X', ['R1', 'L12'], ''],
    ['R', ['L12', 'R1'], 'R1'],
    ['voltage', ['R1', 'open'], ''],
    ['', ['R1'], ''],
    ['R1', [], ''],
    ['a'.repeat(31), ['a'.repeat(30)], ''],
  ] as const)
    it(`to “${found.slice(0, 10)}” of ${words.join(', ').slice(0, 20) || 'none'} is “${wanted}”`, () => {
      assert.equal(nearest(found, words), wanted);
    });
});
