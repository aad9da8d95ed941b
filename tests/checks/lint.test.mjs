// The linter refuses what the architecture and a strict content policy forbid, and nothing else.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Linter } from 'eslint';
import tseslint from 'typescript-eslint';
import config from '../../eslint.config.mjs';

// The rules of ours and of the core need no types: without the typed ones, samples need not exist as files.
const untyped = config.map(({ rules = {}, languageOptions, ...rest }) => ({
  ...rest,
  ...(languageOptions && { languageOptions: { ...languageOptions, parserOptions: {} } }),
  rules: Object.fromEntries(
    Object.entries(rules).filter(([name]) => !name.startsWith('@typescript-eslint/')),
  ),
}));
const linter = new Linter({ configType: 'flat' });

/** The rules that refuse a sample standing at a path. */
function refusals(filename, code) {
  const messages = linter.verify(code, [{ languageOptions: { parser: tseslint.parser } }, ...untyped], {
    filename,
  });
  return messages.map(({ ruleId, message }) => ruleId ?? message);
}

const forbidden = [
  ['src/engine/solve/a.ts', "import { parseCircuit } from '../notation/index.ts';", 'rheolet/layers'],
  ['src/engine/quantity/a.ts', "import type { Circuit } from '../circuit/index.ts';", 'rheolet/layers'],
  ['src/engine/words/a.ts', "import { gcd } from '../quantity/index.ts';", 'rheolet/layers'],
  ['src/engine/rules/a.ts', "import { drawSchematic } from '../schematic/index.ts';", 'rheolet/layers'],
  ['src/engine/rules/a.ts', "import { solve } from '../solve/solve.ts';", 'rheolet/layers'],
  ['src/engine/rules/a.ts', "export * from '../index.ts';", 'rheolet/layers'],
  ['src/engine/solve/a.ts', "import { LitElement } from 'lit';", 'rheolet/layers'],
  ['src/engine/solve/a.ts', "import Fraction from 'fraction.js';", 'rheolet/layers'],
  ['src/engine/solve/a.ts', "import { Board } from '../../components/board/index.ts';", 'rheolet/layers'],
  ['src/engine/solve/a.ts', "const late = import('../notation/index.ts');", 'rheolet/layers'],
  ['src/engine/index.ts', "export { solve } from './solve/solve.ts';", 'rheolet/layers'],
  ['src/engine/index.ts', "export { embed } from './schematic/web/embed.ts';", 'rheolet/layers'],
  [
    'src/components/board/a.ts',
    "import { formatCircuit } from '../../engine/notation/format/index.ts';",
    'rheolet/layers',
  ],
  [
    'src/components/board/a.ts',
    "import { sayLevels } from '../../engine/words/levels/index.ts';",
    'rheolet/layers',
  ],
  ['src/engine/rules/a.ts', "import { drawWeb } from '../schematic/web/index.ts';", 'rheolet/layers'],
  ['src/components/board/a.ts', "import { solve } from '../../engine/solve/index.ts';", 'rheolet/layers'],
  ['src/components/board/a.ts', "import { solve } from '../../engine/index.ts';", 'rheolet/layers'],
  ['src/components/meter/a.ts', "import { Board } from '../board/board.ts';", 'rheolet/layers'],
  ['src/components/meter/a.ts', "import '../board/define.ts';", 'rheolet/layers'],
  ['src/components/meter/a.ts', "import { chain } from 'mathjs';", 'rheolet/layers'],
  ['src/loader/a.ts', "import { ink } from '../components/page/index.ts';", 'rheolet/layers'],
  ['src/loader/a.ts', "import { say } from '../engine/index.ts';", 'rheolet/layers'],
  ['src/loader/a.ts', "import { LitElement } from 'lit';", 'rheolet/layers'],
  ['src/components/meter/a.ts', "import { at } from '../../../tests/at.ts';", 'rheolet/layers'],
  ['src/engine/solve/a.ts', 'const now = Date.now();', 'no-restricted-globals'],
  ['src/engine/solve/a.ts', 'const now = performance.now();', 'no-restricted-globals'],
  ['src/engine/solve/a.ts', 'const chance = Math.random();', 'no-restricted-properties'],
  ['src/engine/solve/a.ts', 'const root = document.body;', 'no-restricted-globals'],
  ['src/engine/solve/a.ts', "console.log('here');", 'no-restricted-globals'],
  ['src/components/board/a.ts', "console.log('here');", 'no-console'],
  ['src/components/board/a.ts', 'const a = html`<p style="color: red"></p>`;', 'no-restricted-syntax'],
  ['src/components/board/a.ts', 'const a = svg`<g style=${b}></g>`;', 'no-restricted-syntax'],
  ['src/components/board/a.ts', 'const a = html`<style>p {}</style>`;', 'no-restricted-syntax'],
  ['src/components/board/a.ts', 'root.innerHTML = text;', 'no-restricted-syntax'],
  ['src/components/board/a.ts', "root.setAttribute('style', text);", 'no-restricted-syntax'],
  [
    'src/components/board/a.ts',
    "import { styleMap } from 'lit/directives/style-map.js';",
    'no-restricted-imports',
  ],
  [
    'src/components/board/a.ts',
    "import { unsafeHTML } from 'lit/directives/unsafe-html.js';",
    'no-restricted-imports',
  ],
  [
    'src/components/board/a.ts',
    "import { unsafeSVG } from 'lit/directives/unsafe-svg.js';",
    'no-restricted-imports',
  ],
  ['src/components/board/a.ts', 'export const ohm = 1;', 'rheolet/docstring'],
];

const allowed = [
  ['src/engine/rules/a.ts', "import { solve } from '../solve/index.ts';"],
  ['src/engine/words/en/a.ts', "import type { Circuit } from '../../circuit/index.ts';"],
  ['src/engine/words/en/a.ts', "import { list } from '../list.ts';"],
  ['src/engine/quantity/a.ts', "import Fraction from 'fraction.js';"],
  ['src/engine/index.ts', "export * from './solve/index.ts';"],
  ['src/components/all.ts', "import './board/define.ts';"],
  ['src/components/board/a.ts', "import { css } from 'lit';\nimport { solve } from '../../engine/core.ts';"],
  ['src/components/graph/a.ts', "const late = import('../../engine/whatif/index.ts');"],
  ['src/components/board/a.ts', "const late = import('../../engine/notation/format/index.ts');"],
  ['src/components/levels/a.ts', "import { sayLevels } from '../../engine/words/levels/index.ts';"],
  ['src/components/meter/a.ts', "import { Board } from '../board/index.ts';"],
  ['src/components/board/a.ts', 'const a = html`<p class="style"></p>`;'],
  ['src/components/board/a.ts', '/** One ohm. */\nexport const ohm = 1;'],
  ['tests/engine/solve/a.test.ts', 'const now = Date.now();'],
];

test('what the layers and the strict policy forbid is refused', () => {
  for (const [path, code, rule] of forbidden) {
    assert.ok(refusals(path, code).includes(rule), `${path} passed: ${code}`);
  }
});

test('what they allow passes', () => {
  for (const [path, code] of allowed) assert.deepEqual(refusals(path, code), [], `${path}: ${code}`);
});

test('a comment cannot switch the linter off', () => {
  const code = '/* eslint-disable */\nconst now = Date.now();';
  assert.ok(refusals('src/engine/solve/a.ts', code).includes('no-restricted-globals'));
});
