// `npm run bench`: the engine beside general-purpose libraries, on the same circuits in the same process.
import { spawnSync } from 'node:child_process';
import { bundle } from './bundle.mjs';

const output = await bundle('bench', ['tests/bench/solve.ts']);
process.exitCode = spawnSync(process.execPath, [output], { stdio: 'inherit' }).status ?? 1;
