// `npm run bench`: the engine beside general-purpose libraries, on the same circuits in the same process.
import { spawnSync } from 'node:child_process';
import { bundle } from './bundle.mjs';

for (const name of ['solve', 'large']) {
  const output = await bundle(`bench-${name}`, [`tests/bench/${name}.ts`]);
  process.exitCode ||= spawnSync(process.execPath, [output], { stdio: 'inherit' }).status ?? 1;
}
