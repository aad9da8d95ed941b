import { spawnSync } from 'node:child_process';

/**
 * Runs a file of node:test tests, counted under the suite's name, and gives the exit code. With `verbose` the
 * name of every test is printed, else only the failures and what is slow.
 */
export function runNodeTests(suite, file, { verbose }) {
  const reporter = ['--test-reporter', './tests/run/reporter.mjs', '--test-reporter-destination', 'stdout'];
  const run = spawnSync(process.execPath, ['--enable-source-maps', ...reporter, file], {
    stdio: 'inherit',
    env: { ...process.env, SUITE: suite, VERBOSE: verbose ? '1' : '' },
  });
  return run.status ?? 1;
}
