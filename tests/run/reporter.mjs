import { inspect } from 'node:util';
import { record } from './tally.mjs';

const slow = 1000; // ms

/** Reporter for node:test: names on request, failures and slow tests always, and the counts for the closing line. */
export default async function* report(events) {
  const verbose = Boolean(process.env.VERBOSE);
  let passed = 0;
  const failures = [];
  let skipped = 0;
  for await (const { type, data } of events) {
    const indent = '  '.repeat((data.nesting ?? 0) + 1);
    const isSuite = data.details?.type === 'suite';
    if (
      type === 'test:diagnostic' &&
      verbose &&
      !/^(tests|suites|pass|fail|cancelled|skipped|todo|duration_ms) /.test(data.message)
    ) {
      yield `${indent}  ${data.message}\n`;
    } else if (type === 'test:pass' && data.skip !== undefined) {
      skipped++;
      yield `${indent}- skipped: ${data.name}\n`;
    } else if (type === 'test:pass' && !isSuite) {
      passed++;
      const ms = Math.round(data.details.duration_ms);
      if (verbose || ms > slow) yield `${indent}✔ ${data.name}${ms > slow ? ` (${ms} ms)` : ''}\n`;
    } else if (type === 'test:fail' && data.details.error?.failureType !== 'subtestsFailed') {
      const said = `${indent}✖ ${data.name}\n${explain(data.details.error, `${indent}    `)}`;
      failures.push(said);
      yield `${said}\n`;
    }
  }
  const suite = process.env.SUITE ?? 'tests';
  const failed = failures.length;
  record(suite, { passed, failed, failures });
  yield `  ${suite}: ${passed} passed, ${failed} failed${skipped ? `, ${skipped} skipped` : ''}\n`;
  if (passed + failed === 0) {
    process.exitCode = 1;
    yield '  No test was run.\n';
  }
}

/** What went wrong, and what that came of: a property tells its counterexample, its cause what failed there. */
function explain(error, indent) {
  const cause = error?.cause ?? error;
  const text = cause?.stack ?? inspect(cause);
  const deeper = cause?.cause ? `\n${cause.cause.stack ?? inspect(cause.cause)}` : '';
  return `${text}${deeper}`
    .split('\n')
    .filter((line) => !/node:internal|^\s+at .*node_modules/.test(line))
    .map((line) => indent + line)
    .join('\n');
}
