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

/** The counts of one page; a page that could not run, or that holds no test, is one failure. */
function count({ testResults, errors }) {
  const tests = testResults ? leaves(testResults) : [];
  const passed = tests.filter((test) => test.passed && !test.skipped).length;
  const skipped = tests.filter((test) => test.skipped).length;
  const broken = errors.length > 0 || tests.length === 0 ? 1 : 0;
  return { passed, skipped, failed: tests.length - passed - skipped + broken };
}

/** What went wrong in a page, a text for each. */
function mishaps({ testResults, errors }) {
  return [
    ...errors.map((error) => `    ✖ could not run\n${explain(error)}`),
    ...(testResults ? failures(testResults) : []).map(
      ({ name, error }) => `    ✖ ${name}\n${explain(error ?? {})}`,
    ),
    ...(errors.length === 0 && !(testResults && leaves(testResults).length) ? ['    ✖ holds no test'] : []),
  ];
}

function print(session, page, { passed, skipped }) {
  const { testResults, logs, request404s = [] } = session;
  const took = testResults ? leaves(testResults).reduce((sum, { duration = 0 }) => sum + duration, 0) : 0;
  console.log(
    `  ${page}: ${passed} passed${skipped ? `, ${skipped} skipped` : ''} (${(took / 1000).toFixed(1)} s)`,
  );
  for (const log of logs) console.log('    logged:', ...log);
  for (const url of request404s) console.log(`    not found: ${url}`);
  for (const mishap of mishaps(session)) console.log(mishap);
}

const empty = () => ({ passed: 0, failed: 0, skipped: 0 });
const add = (sum, counts) => Object.keys(sum).forEach((key) => (sum[key] += counts[key]));

/** "Chromium 412, Firefox 398 (14 need Chromium)": what ran where. */
function say([browser, { passed, failed, skipped }]) {
  const others = [failed && `${failed} failed`, skipped && `${skipped} need Chromium`].filter(Boolean);
  return `${browser} ${passed}${others.length ? ` (${others.join(', ')})` : ''}`;
}

/**
 * Reporter for the browser runner: for each browser every page with its count, every failure and what a page logged,
 * then what ran where, and which browsers are absent.
 */
export function elementReporter(absent) {
  let names = [];
  return {
    start({ browserNames }) {
      names = [...new Set(browserNames)];
    },
    onTestRunFinished({ sessions }) {
      const sum = empty();
      const said = [];
      const ran = new Map(names.map((name) => [name, empty()]));
      for (const name of names) {
        console.log(`  ${name}`);
        const own = sessions.filter(({ browser }) => browser.name === name);
        for (const session of own.sort((a, b) => a.testFile.localeCompare(b.testFile))) {
          const counts = count(session);
          const page = session.testFile.match(/elements-\d+\/(.*)\.js$/)[1];
          print(session, page, counts);
          said.push(...mishaps(session).map((mishap) => `  ${page}, ${name}\n${mishap}`));
          add(ran.get(name), counts);
          add(sum, counts);
        }
      }
      record('test:elements', { ...sum, failures: said });
      console.log(
        `  elements: ${[...ran].map(say).join('; ')}${absent.length ? `; not present: ${absent.join(', ')}` : ''}`,
      );
      // The runner leaves with 0 when a file held no test.
      if (sum.failed) process.on('exit', () => (process.exitCode = 1));
    },
  };
}
