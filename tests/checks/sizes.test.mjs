// Weights (KiB, gzip -9) against the budget of each, and against the ceiling that holds until the budget is met: exact, no slack.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { test } from 'node:test';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { minify } from 'terser';
import { terserOptions } from '../../terser.config.mjs';

const budgets = JSON.parse(readFileSync('tests/checks/budgets.json', 'utf8'));
const core = {
  notation: 'parseCircuit',
  solve: 'solve, solveExact, track',
  rules: 'checkRules',
  words: 'say',
};

const weigh = (bytes) => gzipSync(bytes, { level: 9 }).length / 1024;

/** Parsing, exact and live solving and the rules, minified as they are shipped, with the sentences of English in or out. */
async function engine({ words }) {
  const noWords = {
    name: 'no-words',
    setup: ({ onLoad }) =>
      onLoad({ filter: /words\/en\.ts$/ }, () => ({
        contents: "export const en = { tag: 'en', sentences: {} };",
      })),
  };
  const exports = Object.entries(core).map(
    ([from, names]) => `export { ${names} } from './src/engine/${from}/index.ts';`,
  );
  const { outputFiles } = await build({
    stdin: { contents: exports.join('\n'), resolveDir: '.' },
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    write: false,
    plugins: words ? [] : [noWords],
  });
  const { code } = await minify(outputFiles[0].text, terserOptions);
  return weigh(code);
}

/** A script of dist and every file that it imports, directly or not. */
function fetched(file, seen = new Set()) {
  if (seen.has(file)) return seen;
  seen.add(file);
  for (const [, path] of readFileSync(file, 'utf8').matchAll(/(?:from|import)\s*["'](\.[^"']+)["']/g)) {
    fetched(join(dirname(file), path), seen);
  }
  return seen;
}
const files = (...names) => [...new Set(names.flatMap((name) => [...fetched(`dist/${name}.js`)]))];
const total = (names) => names.map((name) => weigh(readFileSync(name))).reduce((a, b) => a + b, 0);

/** What an element adds to a page that has a board, without the parts of the engine that it brings. */
const added = (name) =>
  total(files('board', name).filter((file) => !parts.includes(file))) - total(files('board'));
/** Parts of the engine that only some elements need. */
const parts = ['reasons', 'whatif', 'claims', 'explain', 'mark', 'kirchhoff'].map(
  (part) => `dist/chunks/${part}.js`,
);

/** Made for the first of the two weights that it is part of. */
let withoutWords;
const engineCore = () => (withoutWords ??= engine({ words: false }));

const weights = {
  'engine core': engineCore,
  'English words': async () => (await engine({ words: true })) - (await engineCore()),
  'solver for curves': () => total(['dist/chunks/nonlinear.js']),
  'solver for large circuits': () => total(['dist/chunks/sparse.js']),
  'pictures of a board': () => total(['dist/chunks/picture.js']),
  claims: () => total(['dist/chunks/claims.js']),
  'drawing of reductions': () => total(['dist/chunks/pictures.js']),
  explain: () => total(['dist/chunks/explain.js']),
  'Kirchhoff’s equations': () => total(['dist/chunks/kirchhoff.js']),
  'numbers filled in': () => total(['dist/chunks/gap.js', 'dist/chunks/mark.js']),
  'words of reasons': () => total(['dist/chunks/reasons.js']),
  'drawing of webs': () => total(['dist/chunks/web.js']),
  'drawing of changeover switches': () => total(['dist/chunks/fork.js']),
  'drawing of potentiometers': () => total(['dist/chunks/wiper.js']),
  'page with board, resistor, value, meter and rules': () =>
    total(files('board', 'resistor', 'value', 'meter', 'rules')),
  'all in one': () => total(['dist/rheolet.min.js']),
  'lazy loader': () => total(['dist/rheolet-lazy.js']),
  supply: () => added('supply'),
  surroundings: () => added('surroundings'),
  switch: () => added('switch'),
  table: () => added('table'),
  claim: () => added('claim'),
  steps: () => added('steps'),
  graph: () => added('graph'),
  activity: () => added('activity'),
  levels: () => added('levels'),
};

for (const [name, { budget, ceiling = budget }] of Object.entries(budgets)) {
  test(`${name} weighs at most ${ceiling} KiB`, async (t) => {
    const weight = await weights[name]();
    const over = weight - budget;
    t.diagnostic(
      `${weight.toFixed(2)} KiB${over > 0 ? `: over its budget of ${budget} by ${over.toFixed(2)}` : ''}`,
    );
    assert.ok(weight <= ceiling, `${weight.toFixed(2)} KiB of ${ceiling}`);
    const slack = ceiling > budget ? ceiling - Math.max(weight, budget) : 0;
    assert.ok(
      slack < 0.25,
      `It weighs ${weight.toFixed(2)} KiB now: lower the ceiling of ${ceiling} in budgets.json.`,
    );
  });
}

test('a page with board, resistor and meter fetches at most four files, none nested deeper than two', () => {
  const names = files('board', 'resistor', 'meter');
  assert.ok(names.length <= 4, names.join(', '));
  for (const chunk of names.filter((name) => name.includes('/chunks/')))
    assert.equal(fetched(chunk).size, 1, chunk);
});
