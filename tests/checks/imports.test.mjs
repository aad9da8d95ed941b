// Every script of dist can be imported in Node, where there is no page.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from 'node:test';
import { pathToFileURL } from 'node:url';

const files = readdirSync('dist', { recursive: true }).filter((file) => file.endsWith('.js'));

test('dist holds the scripts that are promised', () => {
  const promised = [
    'board',
    'resistor',
    'value',
    'meter',
    'rules',
    'graph',
    'activity',
    'levels',
    'rheolet',
    'rheolet.min',
    'rheolet-lazy',
    'engine/index',
  ];
  for (const name of promised) assert.ok(files.includes(`${name}.js`), `${name}.js is missing`);
});

test('every script can be imported in Node, in either order and twice', () => {
  const imports = [...files, ...files.toReversed()].map((file) => pathToFileURL(`dist/${file}`).href);
  // A query makes the second import another copy.
  const code = imports.map((url, at) => `await import(${JSON.stringify(`${url}?${at}`)});`).join('\n');
  execFileSync(process.execPath, ['--input-type=module', '-e', code], { stdio: 'pipe' });
});

test('the package is imported by its own names', () => {
  const { exports } = JSON.parse(readFileSync('package.json', 'utf8'));
  const names = Object.keys(exports).filter((name) => !name.endsWith('.json'));
  const code = names.map((name) => `await import(${JSON.stringify(`rheolet${name.slice(1)}`)});`).join('\n');
  execFileSync(process.execPath, ['--input-type=module', '-e', code], { stdio: 'pipe' });
});
