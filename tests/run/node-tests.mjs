import { spawn } from 'node:child_process';

/**
 * Runs a file of node:test tests, counted under the suite's name, prints what it said once it has ended, and gives
 * the exit code. With `verbose` the name of every test is printed, else only the failures and what is slow.
 */
export function runNodeTests(suite, file, { verbose }) {
  const reporter = ['--test-reporter', './tests/run/reporter.mjs', '--test-reporter-destination', 'stdout'];
  const run = spawn(process.execPath, ['--enable-source-maps', ...reporter, file], {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, SUITE: suite, VERBOSE: verbose ? '1' : '' },
  });
  const said = [];
  for (const stream of [run.stdout, run.stderr]) stream.on('data', (chunk) => said.push(chunk));
  return new Promise((resolve) => {
    run.on('close', (code) => {
      process.stdout.write(Buffer.concat(said));
      resolve(code ?? 1);
    });
  });
}
