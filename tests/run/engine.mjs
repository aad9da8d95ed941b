// `npm run test:engine [-- PART_OF_A_PATH]`: the engine's tests as one bundle, in one Node process.
import { rmSync } from 'node:fs';
import { bundle } from './bundle.mjs';
import { runNodeTests } from './node-tests.mjs';
import { testFiles } from './test-files.mjs';

const part = process.argv[2] ?? '';
const files = testFiles('tests/engine', part);
const output = await bundle(`engine-tests-${process.pid}`, files);
process.exitCode = runNodeTests('test:engine', output, { verbose: part !== '' });
rmSync(output, { force: true });
rmSync(`${output}.map`, { force: true });
