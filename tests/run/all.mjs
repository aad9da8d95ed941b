// `npm test`: step after step, two beside each other, until one fails; at the end what failed once more, where no one
// has to look for it, and a line that adds all of them up.
import { spawn } from 'node:child_process';
import { mkdtempSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { recorded } from './tally.mjs';

const { scripts } = JSON.parse(readFileSync('package.json', 'utf8'));
/** These are two processes or wait for pages, so what runs beside them fills what they leave of two processors. */
const long = ['test:elements', 'test:engine', 'check:leaks'];
/** Its pages are not to wait for long: the last, when little else runs. */
const last = 'check:hosts';
const checks = Object.keys(scripts).filter(
  (name) => name.startsWith('check:') && !long.includes(name) && name !== last,
);
const steps = ['lint', 'format:check', 'typecheck:engine', 'build', ...long, ...checks, last];
const atOnce = 2;

mkdirSync('.tmp', { recursive: true });
const folder = mkdtempSync('.tmp/tally-');

/** A step's exit code; it says nothing until it ends, so that its lines stay together. */
function run(step) {
  const start = Date.now();
  const said = [];
  const child = spawn(scripts[step], {
    shell: true,
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, TALLY: folder },
  });
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (chunk) => said.push(chunk));
  return new Promise((end) => {
    child.on('close', (code) => {
      const seconds = ((Date.now() - start) / 1000).toFixed(1);
      process.stdout.write(`\n— ${step}\n${Buffer.concat(said)}  ${seconds} s\n`);
      end(code);
    });
  });
}

/** The exit code of each step that has begun. */
const codes = {};
const waiting = [...steps];
const begun = {};
async function work() {
  while (waiting.length && !Object.values(codes).some(Boolean)) {
    const step = waiting.shift();
    // Of the built package; nothing else waits for another.
    if (step.startsWith('check:')) await begun.build;
    begun[step] = run(step);
    codes[step] = await begun[step];
  }
}
await Promise.all(Array.from({ length: atOnce }, work));

const sum = { passed: 0, failed: 0 };
const failures = [];
for (const [step, code] of Object.entries(codes)) {
  // A step that counts nothing (the compiler, the linter) is one check; a step that died is one failure.
  const ok = code === 0;
  const counted = recorded(folder, step) ?? { passed: ok ? 1 : 0, failed: 0, failures: [] };
  sum.passed += counted.passed;
  sum.failed += ok ? 0 : Math.max(1, counted.failed);
  failures.push(...counted.failures);
}
rmSync(folder, { recursive: true });
if (failures.length) console.log(`\n— what failed\n${failures.join('\n')}`);
console.log(`\n${sum.passed} passed, ${sum.failed} failed`);
process.exitCode = sum.failed ? 1 : 0;
