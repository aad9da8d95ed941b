import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { parseCircuit, say, solve } from '../../../src/engine/index.ts';
import spoken from './spoken.json' with { type: 'json' };

// Circuits that are faulty, dangerous, or only look so, each with all that is said of it: read as prose, one by one.
describe('what is said of a circuit', () => {
  for (const [line, sentences] of Object.entries<readonly string[]>(spoken)) {
    it(`${line}: ${sentences.length === 0 ? 'nothing' : `${sentences.length}`}`, () => {
      const { faults, cautions, remarks } = solve(parseCircuit(line));
      assert.deepEqual(
        [...faults, ...cautions, ...remarks].map((note) => say(note)),
        sentences,
      );
    });
  }

  it('defers to local rules wherever it cautions', () => {
    const cautions = Object.values<readonly string[]>(spoken)
      .flat()
      .filter((sentence) => sentence.startsWith('Caution'));
    assert.ok(cautions.length > 20);
    for (const sentence of cautions) assert.match(sentence, /Follow local rules.*qualified staff\.$/);
  });
});
