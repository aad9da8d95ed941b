import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { nearest } from '../../../src/engine/circuit/index.ts';

const letters = 'RLB12o_'.split('');
const word = fc.string({ unit: fc.constantFrom(...letters), minLength: 1, maxLength: 6 });

/** Whether so many changes, or fewer, lead from one word to the other, by trying every one at the first letters that differ. */
function within(most: number, from: string, to: string): boolean {
  if (from === '' || to === '') return from.length + to.length <= most;
  const [one, two] = [from.slice(1), to.slice(1)];
  if (from.startsWith(to.charAt(0)) && within(most, one, two)) return true;
  if (most === 0) return false;
  const isSwapped = from.length > 1 && from.charAt(0) + from.charAt(1) === to.charAt(1) + to.charAt(0);
  const tries = [[one, to], [from, two], [one, two], ...(isSwapped ? [[from.slice(2), to.slice(2)]] : [])];
  return tries.some(([a = '', b = '']) => within(most - 1, a, b));
}

describe('the nearest word', () => {
  it('is none further than a third of its letters, or one of two or three, and none that is nearer, or as near with the first letter, is left out', () => {
    const few = [0, 0, 1, 1, 1, 1, 2];
    let suggested = 0;
    fc.assert(
      fc.property(word, fc.array(word, { maxLength: 4 }), (found, words) => {
        const steps = (each: string): number => {
          const [a, b] = [found.toLowerCase(), each.toLowerCase()];
          const all = Array.from({ length: (few[each.length] ?? 0) + 1 }, (_, most) => most);
          return all.find((most) => within(most, a, b)) ?? Infinity;
        };
        const least = Math.min(...words.map(steps));
        const close = least === Infinity ? [] : words.filter((each) => steps(each) === least);
        const kin = close.find((each) => each.charAt(0).toLowerCase() === found.charAt(0).toLowerCase());
        const wanted = kin ?? close[0] ?? '';
        assert.equal(nearest(found, words), wanted, `${found} among ${words.join()}`);
        if (wanted) suggested++;
      }),
      { numRuns: 1000 },
    );
    assert.ok(suggested > 50, `${suggested}`);
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
    ['and', ['across', 'ends', 'at'], ''],
    ['hello', ['cell', 'lamp', 'heater'], ''],
    ['wind', ['wire'], ''],
    ['lmap', ['lamp'], 'lamp'],
    ['opne', ['open'], 'open'],
    ['brigded', ['broken', 'bridged'], 'bridged'],
    ['V_R2', ['V_R1', 'V_R12'], 'V_R1'],
    ['R1', ['B1', 'R1b', 'R1a'], 'R1b'],
    ['R9', ['L9', 'R1'], 'R1'],
    ['I_А1', ['I_B1', 'I_A1'], 'I_A1'], // with a Cyrillic А
    ['Ｒ１', ['R1'], 'R1'], // wide
    ['I_R₁', ['I_L1', 'I_R1'], 'I_R1'],
    ['', ['R1'], ''],
    ['R1', [], ''],
    ['a'.repeat(31), ['a'.repeat(30)], ''],
  ] as const)
    it(`to “${found.slice(0, 10)}” of ${words.join(', ').slice(0, 20) || 'none'} is “${wanted}”`, () => {
      assert.equal(nearest(found, words), wanted);
    });
});
