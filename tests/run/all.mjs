// `npm test`: row after row of steps that run beside each other, stopping at the first row that fails; at the end what
// failed once more, where no one has to look for it, and a line that adds all of them up.
import { spawn } from 'node:child_process';
import { mkdtempSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { recorded } from './tally.mjs';

const { scripts } = JSON.parse(readFileSync('package.json', 'utf8'));
/** These take longest, so they begin first. */
const slow = ['check:hosts', 'check:leaks'];
const checks = Object.keys(scripts).filter((name) => name.startsWith('check:') && !slow.includes(name));
const rows = [
  ['lint', 'typecheck', 'build', 'format:check'],
  ['test:engine'],
  ['test:elements'],
  [...slow, ...checks],
];
/** As many steps at once as keep two processors busy and let no page wait for long. */
const atOnce = 3;

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

/** The exit codes of a row's steps. */
async function runRow(row) {
  const codes = {};
  const waiting = [...row];
  const work = async () => {
    for (let step = waiting.shift(); step; step = waiting.shift())
      codes[step] = await run(step, row.length === 1);
  };
  await Promise.all(Array.from({ length: atOnce }, work));
  return codes;
}

const sum = { passed: 0, failed: 0 };
const failures = [];
for (const row of rows) {
  const codes = await runRow(row);
  for (const step of row) {
    // A step that counts nothing (the compiler, the linter) is one check; a step that died is one failure.
    const ok = codes[step] === 0;
    const counted = recorded(folder, step) ?? { passed: ok ? 1 : 0, failed: 0, failures: [] };
    sum.passed += counted.passed;
    sum.failed += ok ? 0 : Math.max(1, counted.failed);
    failures.push(...counted.failures);
  }
  if (Object.values(codes).some(Boolean)) break;
}
rmSync(folder, { recursive: true });
if (failures.length) console.log(`\n— what failed\n${failures.join('\n')}`);
console.log(`\n${sum.passed} passed, ${sum.failed} failed`);
process.exitCode = sum.failed ? 1 : 0;
