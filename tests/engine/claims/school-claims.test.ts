import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { parseCircuit, testClaim, withValue } from '../../../src/engine/index.ts';
import { schoolClaims } from './school-claims.ts';

/** The claim that is true just where the other one is not. */
const opposite: Readonly<Record<string, string>> = { '=': '≠', '≤': '>', '<': '≥', '>': '≤', '≥': '<' };

void describe('what pupils say of a circuit', () => {
  for (const [line, rows] of Object.entries(schoolClaims)) {
    const circuit = parseCircuit(line);
    for (const [text, verdict, fails] of rows) {
      void it(`${text} is ${verdict} so in ${line}`, () => {
        const found = testClaim(circuit, text);
        assert.deepEqual([found.verdict, found.proved], [verdict, true]);
        assert.deepEqual(found.counterexample, fails);
      });

      void it(`the opposite of ${text} has the opposite verdict in ${line}`, () => {
        const turned = text.replace(/[=≤<>≥]/, (sign) => opposite[sign] ?? '');
        const expected = { always: 'never', never: 'always', sometimes: 'sometimes' } as Record<
          string,
          string
        >;
        assert.equal(testClaim(circuit, turned).verdict, expected[verdict]);
      });

      if (fails)
        void it(`${text} fails in ${line} just where it is said to, and holds somewhere else`, () => {
          const there = Object.entries(fails).reduce((at, [id, value]) => withValue(at, id, value), circuit);
          // With the settings turned to where it fails, that is the first that is found.
          assert.deepEqual(testClaim(there, text).counterexample, fails);
        });
    }
  }
});
