// A server that says every file is windows-1252, as old ones do, and a page that does not know better.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { kept, scripts } from './lesson.mjs';
import { host } from './visit.mjs';

/** A page in ASCII: every other character is written by its number. */
const inAscii = (page) =>
  page
    .replace('<meta charset="utf-8" />', '')
    .replace(/[\u0080-\uffff]/g, (unit) => `&#${unit.charCodeAt(0)};`);

const files = ['rheolet.min.js', 'rheolet-lazy.js'];
const pages = Object.fromEntries(
  files.map((file) => [`/${file}`, inAscii(kept('lesson', { scripts: scripts(file) }))]),
);
const site = host({ pages, charset: 'windows-1252' });

for (const file of files) {
  test(`${file} shows ohms where the server says windows-1252`, async () => {
    const visit = await site.open(`/${file}`);
    await visit.isWell();
    assert.equal(await visit.tab.evaluate('document.characterSet'), 'windows-1252');
    const shown = (await visit.shown()).join(' ');
    assert.match(shown, /12[\s.0]*Ω/);
    assert.doesNotMatch(shown, /[ÂÃÎâ]/);
  });

  test(`${file} is in ASCII`, () => {
    assert.doesNotMatch(readFileSync(`dist/${file}`, 'utf8'), /[\u0080-\uffff]/);
  });
}
