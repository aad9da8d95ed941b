// `npm run soak:drawings [-- COUNT]`: draws 5,000 random circuits of every form and kind, each batch from a fresh seed: the laws of a
// legible schematic, no crossing in what lies in a plane, ribbons that add up, and nothing that moves with a setting or a condition.
import { load } from './load.mjs';

const count = Number(process.argv[2] ?? 5000);
const batch = 250;
const { soak } = await load('tests/engine/schematic/soak.ts');
const start = performance.now();
let [components, crossings] = [0, 0];
for (let done = 0; done < count; done += batch) {
  const seed = Math.floor(Math.random() * 2 ** 31);
  try {
    const found = soak(Math.min(batch, count - done), seed);
    components += found.components;
    crossings += found.crossings;
  } catch (error) {
    console.error(`seed ${seed}: ${error.message}`);
    process.exit(1);
  }
}
const seconds = (performance.now() - start) / 1000;
console.log(
  `${count} drawings of ${components} components without a fault, ${crossings} crossings in what may not lie in a plane; ${seconds.toFixed(0)} s`,
);
