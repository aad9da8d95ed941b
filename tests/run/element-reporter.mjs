import { record } from './tally.mjs';

function leaves(suite) {
  return [...suite.tests, ...suite.suites.flatMap(leaves)];
}

function failures(suite, path = []) {
  const own = suite.tests
    .filter((test) => !test.passed && !test.skipped)
    .map((test) => ({ name: [...path, test.name].join(' › '), error: test.error }));
  return [...own, ...suite.suites.flatMap((inner) => failures(inner, [...path, inner.name]))];
}

function explain({ message, stack, expected, actual }) {
  const values = expected === undefined ? [] : [`expected: ${expected}`, `actual: ${actual}`];
  const lines = [message, stack].filter(Boolean).join('\n').split('\n');
  return [...lines, ...values].map((line) => `      ${line}`).join('\n');
}

/** The counts of one file; a file that could not run, or that holds no test, is one failure. */
function count({ testResults, errors }) {
  const tests = testResults ? leaves(testResults) : [];
  const passed = tests.filter((test) => test.passed && !test.skipped).length;
  const skipped = tests.filter((test) => test.skipped).length;
  const broken = errors.length > 0 || tests.length === 0 ? 1 : 0;
  return { passed, skipped, failed: tests.length - passed - skipped + broken };
}

function print(session, file, { passed, skipped }) {
  const { testResults, errors, logs, request404s = [] } = session;
  console.log(`  ${file}: ${passed} passed${skipped ? `, ${skipped} skipped` : ''}`);
  if (errors.length === 0 && leaves(testResults).length === 0) console.log('    ✖ holds no test');
  for (const log of logs) console.log('    logged:', ...log);
  for (const url of request404s) console.log(`    not found: ${url}`);
  for (const error of errors) console.log(`    ✖ could not run\n${explain(error)}`);
  for (const { name, error } of testResults ? failures(testResults) : []) {
    console.log(`    ✖ ${name}\n${explain(error ?? {})}`);
  }
}

/** Reporter for the browser runner: each file with its count, every failure and what a page logged, then the sum. */
export function elementReporter() {
  let root = '';
  return {
    start: ({ config }) => (root = `${config.rootDir}/`),
    onTestRunFinished({ sessions }) {
      const sum = { passed: 0, failed: 0, skipped: 0 };
      for (const session of [...sessions].sort((a, b) => a.testFile.localeCompare(b.testFile))) {
        const counts = count(session);
        print(session, session.testFile.replace(root, ''), counts);
        for (const key of Object.keys(sum)) sum[key] += counts[key];
      }
      record('test:elements', sum.passed, sum.failed);
      console.log(
        `  ${sum.passed} passed, ${sum.failed} failed${sum.skipped ? `, ${sum.skipped} skipped` : ''}`,
      );
      // The runner leaves with 0 when a file held no test.
      if (sum.failed) process.on('exit', () => (process.exitCode = 1));
    },
  };
}
