// `npm run soak [-- PART_OF_A_PATH]`: the engine's tests ten times, their random ones from a fresh seed each time, so that
// rare failures are found. Stops at the first; `SEED=… npm run test:engine` repeats it.
import { spawnSync } from 'node:child_process';

const part = process.argv[2] ?? '';
for (let round = 1; round <= 10; round += 1) {
  const seed = String(Math.floor(Math.random() * 2 ** 31));
  console.log(`— round ${round} of 10, SEED=${seed}`);
  const env = { ...process.env, SEED: seed };
  const { status } = spawnSync(process.execPath, ['tests/run/engine.mjs', part], { stdio: 'inherit', env });
  if (status !== 0) process.exit(1);
}
