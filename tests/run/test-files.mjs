import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

/** The test files under a folder with `part` in their path; none is a mistake, which ends the process. */
export function testFiles(folder, part) {
  const all = existsSync(folder) ? readdirSync(folder, { recursive: true }) : [];
  const files = all
    .map((file) => join(folder, file))
    .filter((file) => file.endsWith('.test.ts') && file.includes(part));
  if (files.length === 0) {
    console.error(`No test${part && ` with "${part}" in its path`} was found in ${folder}.`);
    process.exit(1);
  }
  return files;
}
