import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { en } from '../../../src/engine/index.ts';
import { said } from './said.ts';
import { samples } from './samples.ts';
import snapshot from './sentences.json' with { type: 'json' };

describe('the sentences of English', () => {
  it('are those that have been read as prose', () => {
    assert.deepEqual(said, snapshot);
  });

  it('have a sample each', () => {
    assert.deepEqual(Object.keys(en.sentences).sort(), Object.keys(samples).sort());
  });

  for (const [code, sentences] of Object.entries(said)) {
    it(`are well set: ${code}`, () => {
      for (const text of sentences) {
        assert.ok(text.length > 0);
        assert.doesNotMatch(text, /undefined|null\]|NaN|\[object| {2}|\.\.(?!\d|\s*40)|\s[.,:]/);
        assert.equal(text, text.trim());
        assert.ok(text.length <= 260, `${text.length} characters`);
      }
    });
  }
});
