import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { en, type Catalogue } from '../../../src/engine/words/index.ts';
import { samples } from './samples.ts';
import snapshot from './sentences.json' with { type: 'json' };

/** Each code with what it says of its samples. */
function said<Code extends keyof Catalogue>(code: Code): [Code, readonly string[]] {
  const sentence: (data: Catalogue[Code]) => string = en.sentences[code];
  return [code, samples[code].map((data: Catalogue[Code]) => sentence(data))];
}

const codes = Object.keys(en.sentences).filter((code): code is keyof Catalogue => code in samples);
const now = codes.map(said);

describe('the sentences of English', () => {
  it('are those that have been read as prose', () => {
    assert.deepEqual(Object.fromEntries(now), snapshot);
  });

  it('have a sample each', () => {
    assert.deepEqual(Object.keys(en.sentences).sort(), Object.keys(samples).sort());
  });

  for (const [code, sentences] of now) {
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
