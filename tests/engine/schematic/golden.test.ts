import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { test } from 'node:test';
import { pictures, svgOf } from './golden.ts';

const folder = 'tests/engine/schematic/golden';

for (const [name, picture] of Object.entries(pictures)) {
  test(`the picture ${name} is drawn as it was when it was looked at`, () => {
    assert.equal(`${svgOf(picture)}\n`, readFileSync(`${folder}/${name}.svg`, 'utf8'));
  });
}

test('every golden file belongs to a picture', () => {
  assert.deepEqual(
    readdirSync(folder).sort(),
    Object.keys(pictures)
      .map((name) => `${name}.svg`)
      .sort(),
  );
});
