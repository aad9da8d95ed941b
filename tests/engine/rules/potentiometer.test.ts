import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { checkRules } from '../../../src/engine/rules/index.ts';
import { withConditions } from '../topology/conditions.ts';
import { plain, wiperLines } from '../schematic/random-wipers.ts';

test('the rules say of a potentiometer what they say of two resistors of those values', () => {
  const conditions = fc.array(fc.constantFrom(undefined, undefined, 'broken' as const), {
    minLength: 5,
    maxLength: 5,
  });
  fc.assert(
    fc.property(wiperLines, conditions, (line, list) => {
      const circuit = withConditions(parseCircuit(line), (_, place) => list[place % list.length]);
      const found = checkRules(circuit);
      assert.deepEqual(
        found,
        checkRules(withConditions(plain(circuit), (_, place) => list[place % list.length])),
      );
      assert.ok(found.some(({ about }) => about.some((id) => /\d[ab]$/.test(id))) || list.includes('broken'));
    }),
    { numRuns: 200 },
  );
});
