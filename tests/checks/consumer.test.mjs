// The package as a project sees it that has it among its dependencies: names, types, and nothing dropped by a bundler.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { after, before, test } from 'node:test';
import { build } from 'esbuild';
import { launch } from '../run/browser.mjs';
import { serve } from '../run/server.mjs';

const folder = '.tmp/consumer';
const names = ['board', 'resistor', 'value', 'meter', 'rules'];
const entries = {
  elements: names.map((name) => `import 'rheolet/${name}.js';`).join('\n'),
  all: "import 'rheolet';",
};
const typed = `
import { parseCircuit, solve } from 'rheolet/engine';
import 'rheolet/board.js';
const current: number | undefined = solve(parseCircuit('B1 6 V + R1 12 Ω')).current('R1');
const board = document.createElement('rheolet-board');
await board.ready;
board.set('R1', String(current));
// @ts-expect-error: there is no such method
board.launch();
`;

before(() => {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(`${folder}/node_modules`, { recursive: true });
  symlinkSync('../../..', `${folder}/node_modules/rheolet`);
  writeFileSync(`${folder}/package.json`, '{"type": "module"}');
  for (const [name, code] of Object.entries({ ...entries, typed }))
    writeFileSync(`${folder}/${name}.ts`, code);
});
after(() => rmSync(folder, { recursive: true }));

for (const resolution of ['nodenext', 'bundler']) {
  test(`its types are found with module resolution ${resolution}`, () => {
    const module = resolution === 'nodenext' ? 'nodenext' : 'esnext';
    const options = ['--module', module, '--moduleResolution', resolution, '--target', 'es2022', '--strict'];
    const compiler = ['node_modules/typescript/bin/tsc', '--ignoreConfig', '--noEmit'];
    try {
      execFileSync(process.execPath, [...compiler, ...options, `${folder}/typed.ts`], { encoding: 'utf8' });
    } catch (error) {
      assert.fail(error.stdout);
    }
  });
}

test('a bundler keeps every definition, from each element by itself and from all at once', async () => {
  for (const name of Object.keys(entries)) {
    const outfile = `${folder}/${name}.js`;
    await build({
      entryPoints: [`${folder}/${name}.ts`],
      outfile,
      bundle: true,
      format: 'esm',
      logLevel: 'error',
    });
  }
  const pages = Object.fromEntries(
    Object.keys(entries).map((name) => [
      `/${name}`,
      `<script type="module" src="/${folder}/${name}.js"></script>`,
    ]),
  );
  const server = await serve({ pages });
  const browser = await launch();
  try {
    for (const page of Object.keys(pages)) {
      const tab = await browser.newPage();
      await tab.goto(server.url + page);
      const missing = await tab.evaluate(
        (all) => all.filter((name) => !customElements.get(`rheolet-${name}`)),
        names,
      );
      assert.deepEqual(missing, [], page);
    }
  } finally {
    await browser.close();
    server.close();
  }
});
