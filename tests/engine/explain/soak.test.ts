import assert from 'node:assert/strict';
import { it } from 'node:test';
import { soak } from './soak.ts';

// The share of `npm run soak:explain` that every run of the tests has, the same each time.
it('400 random circuits are explained from random givens', () => {
  const { found, solved, compared } = soak(400, 20_261_126);
  assert.ok(found > 200, `${found} found`);
  assert.ok(solved > 20, `${solved} by equations`);
  assert.ok(compared > 60, `${compared} compared with the shortest`);
});
