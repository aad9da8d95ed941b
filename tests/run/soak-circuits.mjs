// `npm run soak:circuits [-- COUNT]`: solves 100,000 random circuits of extreme values (10⁻⁶ to 10⁹ Ω), curves, sensors in heat and
// cold and fuses that blow among them, each batch from a fresh seed: no reading that is not a number, nothing that
// hangs, Kirchhoff's current law to 1e-12 of the largest current, no fuse left above its rating.
import { performance } from 'node:perf_hooks';
import { load } from './load.mjs';

const count = Number(process.argv[2] ?? 100_000);
const batch = 2000;
const { soak } = await load('tests/engine/solve/soak.ts');
let [faulty, blown, residual, slowest] = [0, 0, 0, 0];
for (let done = 0; done < count; done += batch) {
  const seed = Math.floor(Math.random() * 2 ** 31);
  try {
    const found = soak(Math.min(batch, count - done), seed, 1e-12, () => performance.now());
    faulty += found.faulty;
    blown += found.blown;
    residual = Math.max(residual, found.residual);
    slowest = Math.max(slowest, found.slowest);
  } catch (error) {
    console.error(`seed ${seed}: ${error.message}`);
    process.exit(1);
  }
}
console.log(
  `${count} circuits, ${faulty} of them with a fault, ${blown} in which time blows a fuse; at most ${residual.toExponential(1)} of the largest current left over at a node; the slowest took ${slowest.toFixed(0)} ms`,
);
