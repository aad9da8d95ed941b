// The shape of the code: small files, and more tests than source.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { test } from 'node:test';

function lines(folders, wanted) {
  return folders
    .flatMap((folder) => readdirSync(folder, { recursive: true }).map((name) => join(folder, name)))
    .filter((path) => wanted.test(path))
    .map((path) => ({ path, count: readFileSync(path, 'utf8').trimEnd().split('\n').length }))
    .sort((a, b) => a.count - b.count);
}

const source = lines(['src'], /\.ts$/);
const tests = lines(['tests/engine', 'tests/components', 'tests/checks', 'tests/hosts'], /\.(ts|mjs)$/);
const sum = (files) => files.reduce((total, { count }) => total + count, 0);
const at = (files, share) => files[Math.ceil(share * files.length) - 1];
const say = ({ path, count }) => `${count} lines (${path})`;

test('the median file of src has at most 70 lines', (t) => {
  t.diagnostic(`${say(at(source, 0.5))} of ${source.length} files`);
  assert.ok(at(source, 0.5).count <= 70);
});

test('nine files of src in ten have fewer than 200 lines', (t) => {
  t.diagnostic(say(at(source, 0.9)));
  assert.ok(at(source, 0.9).count < 200);
});

test('no file of src or tests has more than 400 lines', (t) => {
  t.diagnostic(`src: ${say(source.at(-1))}; tests: ${say(tests.at(-1))}`);
  for (const file of [source.at(-1), tests.at(-1)]) assert.ok(file.count <= 400, say(file));
});

const floor = 1.5;

test(`the tests are at least ${floor} times the source`, (t) => {
  const share = sum(tests) / sum(source);
  t.diagnostic(`${sum(tests)} lines to ${sum(source)}: ${share.toFixed(3)}`);
  assert.ok(share >= floor);
});
