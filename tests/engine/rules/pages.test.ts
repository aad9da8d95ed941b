import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { checkRules, ruleLine } from '../../../src/engine/rules/index.ts';
import { solve } from '../../../src/engine/solve/index.ts';
import { pages, rules } from './pages.ts';
import { plain } from './prose.ts';

const thin = /\u202f/g;

void describe('the whole page of rules', () => {
  for (const { what, circuit, page } of pages) {
    const drawn = parseCircuit(circuit);
    void it(`of ${what}`, () => {
      const lines = checkRules(drawn).map((check) => {
        const { symbols, numbers, why, rounded } = ruleLine(check);
        assert.equal(rounded && numbers.length === 0, false);
        return [check.rule, plain(symbols), plain(numbers), why].map((text) => text.replace(thin, ' '));
      });
      assert.deepEqual(lines, page);
    });

    void it(`of ${what}, from readings that are not exact`, () => {
      const lines = checkRules(drawn, solve(drawn)).map((check) => {
        const { symbols, numbers, why } = ruleLine(check);
        return [check.rule, plain(symbols), plain(numbers), why].map((text) => text.replace(thin, ' '));
      });
      assert.deepEqual(lines, page);
    });
  }

  void it('has every rule in its order', () => {
    for (const { page } of pages) assert.deepEqual([...new Set(page.map(([rule]) => rule))], rules);
  });
});
