import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { inLatin } from '../../../src/engine/circuit/index.ts';

describe('a text in the usual signs', () => {
  for (const [found, plain] of [
    ['ΑΒΕΖΗΙΚΜΝΟΡΤΥΧ', 'ABEZHIKMNOPTYX'],
    ['АВЕКМНОРСТХ', 'ABEKMHOPCTX'],
    ['Ｒ１ ＋ Ｒ２', 'R1 + R2'],
    ['R₁²', 'R12'],
  ] as const)
    it(`has those that ${found} looks like`, () => {
      assert.equal(inLatin(found), plain);
    });

  it('keeps letters that look like no Latin one, Ω among them', () => {
    for (const own of ['ΓΔΘΛΞΠΣΦΩ', 'БГДЖЗИЙЛПУФЦ', 'ωµабв', 'B1 6 V + (R1 12 Ω ∥ L1 8 Ω)'])
      assert.equal(inLatin(own).normalize('NFKC'), own.normalize('NFKC'));
  });
});
