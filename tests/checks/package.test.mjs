// What `npm pack` would hold: everything that package.json promises, and no sources, tests or leftovers.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';

const { exports, types, customElements, version } = JSON.parse(readFileSync('package.json', 'utf8'));
const lock = readFileSync('package-lock.json', 'utf8');
const [{ files }] = JSON.parse(execFileSync('npm', ['pack', '--dry-run', '--json'], { encoding: 'utf8' }));
const paths = files.map(({ path }) => path);

test('every entry of package.json is in the package, with its types', (t) => {
  t.diagnostic(`${paths.length} files`);
  const targets = Object.values(exports).flatMap((entry) =>
    typeof entry === 'string' ? entry : Object.values(entry),
  );
  for (const target of [...targets, types, customElements, 'dist/rheolet.min.js']) {
    assert.ok(paths.includes(target.replace('./', '')), target);
  }
});

test('it holds the licence, the README and dist, and nothing else', () => {
  const others = paths.filter(
    (path) => !/^(dist\/.+\.(js|json|d\.ts)|package\.json|README\.md|LICENSE)$/.test(path),
  );
  assert.deepEqual(others, []);
  for (const path of ['README.md', 'LICENSE']) assert.ok(paths.includes(path), path);
});

test('the lock file is of the same version and names no registry', () => {
  assert.equal(JSON.parse(lock).version, version);
  assert.ok(!lock.includes('"resolved"'));
});
