// `npm run check:hosts [-- PART_OF_A_NAME]`: the package in pages that nobody controls, a process for each file of tests.
import { readdirSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { runNodeTests } from './node-tests.mjs';

const folder = 'tests/hosts';
const part = process.argv[2] ?? '';
/** In order of the alphabet, which has those of the demo first: they take longest, and two processors are to share them. */
const waiting = readdirSync(folder)
  .filter((file) => file.endsWith('.test.mjs') && file.includes(part))
  .sort();
if (waiting.length === 0) {
  console.error(`No test with "${part}" in its name was found in ${folder}.`);
  process.exitCode = 1;
}

async function work() {
  for (let file = waiting.shift(); file; file = waiting.shift()) {
    const suite = `check:hosts.${file.replace('.test.mjs', '')}`;
    const code = await runNodeTests(suite, `${folder}/${file}`, { verbose: true });
    if (code) process.exitCode = code;
  }
}
await Promise.all(Array.from({ length: Math.min(2, availableParallelism()) }, work));
