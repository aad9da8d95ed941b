// `npm test`: every step in order, stopping at the first that fails; the last line adds all of them up.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { recorded } from './tally.mjs';

const { scripts } = JSON.parse(readFileSync('package.json', 'utf8'));
const checks = Object.keys(scripts).filter((name) => name.startsWith('check:'));
const steps = ['typecheck', 'lint', 'format:check', 'test:engine', 'build', 'test:elements', ...checks];

mkdirSync('.tmp', { recursive: true });
const folder = mkdtempSync('.tmp/tally-');
const sum = { passed: 0, failed: 0 };
for (const step of steps) {
  console.log(`\n— ${step}`);
  const start = Date.now();
  const { status } = spawnSync(scripts[step], {
    shell: true,
    stdio: 'inherit',
    env: { ...process.env, TALLY: folder },
  });
  // A step that counts nothing (the compiler, the linter) is one check; a step that died is one failure.
  const ok = status === 0;
  const counted = recorded(folder, step) ?? { passed: ok ? 1 : 0, failed: 0 };
  sum.passed += counted.passed;
  sum.failed += ok ? 0 : Math.max(1, counted.failed);
  console.log(`  ${((Date.now() - start) / 1000).toFixed(1)} s`);
  if (!ok) break;
}
rmSync(folder, { recursive: true });
console.log(`\n${sum.passed} passed, ${sum.failed} failed`);
process.exitCode = sum.failed ? 1 : 0;
