import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Leaves a suite's counts, and what it said of each failure, for the end of `npm test`; does nothing when the suite is
 * run by itself. A suite in several processes counts each as `SUITE.PART`.
 */
export function record(suite, { passed, failed, failures }) {
  const folder = process.env.TALLY;
  if (folder) writeFileSync(join(folder, `${suite}.json`), JSON.stringify({ passed, failed, failures }));
}

/** What a suite left in a folder; undefined if it left nothing. */
export function recorded(folder, suite) {
  const files = readdirSync(folder).filter((file) => file.split('.')[0] === suite);
  if (files.length === 0) return undefined;
  const counts = files.map((file) => JSON.parse(readFileSync(join(folder, file), 'utf8')));
  const sum = (key) => counts.reduce((total, count) => total + count[key], 0);
  return {
    passed: sum('passed'),
    failed: sum('failed'),
    failures: counts.flatMap(({ failures }) => failures),
  };
}
