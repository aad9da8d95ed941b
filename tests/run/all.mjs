// `npm test`: every step in order, those of one row beside each other, stopping at the first row that fails; at the
// end what failed once more, where no one has to look for it, and a line that adds all of them up.
import { spawn } from 'node:child_process';
import { mkdtempSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { recorded } from './tally.mjs';

const { scripts } = JSON.parse(readFileSync('package.json', 'utf8'));
const slow = ['check:leaks', 'check:hosts'];
const checks = Object.keys(scripts).filter((name) => name.startsWith('check:') && !slow.includes(name));
const rows = [
  ['typecheck', 'lint', 'format:check'],
  ['test:engine'],
  ['build'],
  ['test:elements'],
  ...checks.map((check) => [check]),
  slow,
];

mkdirSync('.tmp', { recursive: true });
const folder = mkdtempSync('.tmp/tally-');

/** A step's exit code; a step that runs beside others says nothing until it ends, so that its lines stay together. */
function run(step, alone) {
  const start = Date.now();
  const said = [];
  const child = spawn(scripts[step], {
    shell: true,
    stdio: ['ignore', ...(alone ? ['inherit', 'inherit'] : ['pipe', 'pipe'])],
    env: { ...process.env, TALLY: folder },
  });
  if (alone) console.log(`\n— ${step}`);
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', (chunk) => said.push(chunk));
  return new Promise((end) => {
    child.on('close', (code) => {
      if (!alone) process.stdout.write(`\n— ${step}\n${Buffer.concat(said)}`);
      console.log(`  ${((Date.now() - start) / 1000).toFixed(1)} s`);
      end(code);
    });
  });
}

const sum = { passed: 0, failed: 0 };
const failures = [];
for (const row of rows) {
  const codes = await Promise.all(row.map((step) => run(step, row.length === 1)));
  row.forEach((step, index) => {
    // A step that counts nothing (the compiler, the linter) is one check; a step that died is one failure.
    const ok = codes[index] === 0;
    const counted = recorded(folder, step) ?? { passed: ok ? 1 : 0, failed: 0, failures: [] };
    sum.passed += counted.passed;
    sum.failed += ok ? 0 : Math.max(1, counted.failed);
    failures.push(...counted.failures);
  });
  if (codes.some(Boolean)) break;
}
rmSync(folder, { recursive: true });
if (failures.length) console.log(`\n— what failed\n${failures.join('\n')}`);
console.log(`\n${sum.passed} passed, ${sum.failed} failed`);
process.exitCode = sum.failed ? 1 : 0;
