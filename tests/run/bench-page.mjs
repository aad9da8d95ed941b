// `npm run bench:page`, or `npm run bench:page -- boards`: frames while a slider moves, first paints and removals of boards,
// and sliders mounted, the processor slowed six times, each beside the same done by another, in the same run.
import { build } from 'esbuild';
import * as boards from '../bench/page/boards.mjs';
import * as frames from '../bench/page/frames.mjs';
import * as sliders from '../bench/page/sliders.mjs';
import { launch } from './browser.mjs';
import { serve } from './server.mjs';

const parts = { frames, boards, sliders };
const asked = process.argv.slice(2);
const wanted = Object.entries(parts).filter(([name]) => asked.length === 0 || asked.includes(name));

await build({
  entryPoints: ['tests/bench/page/plain-board.ts', 'tests/bench/page/material-slider.ts'],
  outdir: '.tmp',
  bundle: true,
  minify: true,
  format: 'esm',
  target: 'es2022',
  conditions: ['production'],
  ignoreAnnotations: true,
  logLevel: 'warning',
});

const server = await serve({ pages: Object.assign({}, ...wanted.map(([, { pages }]) => pages)) });
const browser = await launch();
try {
  for (const [, { measure }] of wanted) await measure(browser, server.url);
} finally {
  await browser.close();
  server.close();
}
