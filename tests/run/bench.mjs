// `npm run bench [-- solve | large]`: the engine beside general-purpose libraries, each part in a process of its own.
import { spawnSync } from 'node:child_process';
import { bundle } from './bundle.mjs';

const asked = process.argv.slice(2);
for (const name of asked.length > 0 ? asked : ['solve', 'large']) {
  const output = await bundle(`bench-${name}`, [`tests/bench/${name}.ts`]);
  process.exitCode ||= spawnSync(process.execPath, [output], { stdio: 'inherit' }).status ?? 1;
}
