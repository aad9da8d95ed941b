// `npm run test:engine [-- PART_OF_A_PATH]`: the engine's tests in Node, a bundle and a process for each of its layers.
import { rmSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { sep } from 'node:path';
import { bundle } from './bundle.mjs';
import { runNodeTests } from './node-tests.mjs';
import { testFiles } from './test-files.mjs';

const longest = 'schematic';
const part = process.argv[2] ?? '';
const layers = new Map();
for (const file of testFiles('tests/engine', part)) {
  const layer = file.split(sep)[2];
  layers.set(layer, [...(layers.get(layer) ?? []), file]);
}

async function run([layer, files]) {
  const output = await bundle(`engine-${layer}-${process.pid}`, files);
  const code = await runNodeTests(`test:engine.${layer}`, output, { verbose: part !== '' });
  rmSync(output, { force: true });
  rmSync(`${output}.map`, { force: true });
  if (code) process.exitCode = code;
}

// The longest layer first, so that no processor waits for it at the end.
const waiting = [...layers].sort(([a], [b]) => Number(b === longest) - Number(a === longest));
async function work() {
  for (let next = waiting.shift(); next; next = waiting.shift()) await run(next);
}
await Promise.all(Array.from({ length: Math.min(4, availableParallelism()) }, work));
