// `npm run soak:explain [-- COUNT]`: 5,000 random circuits explained from random givens, each batch from a fresh seed: every derivation
// ends where the solver does, uses nothing before it is known, holds step by step, and in small circuits is at most one step too long.
import { load } from './load.mjs';

const count = Number(process.argv[2] ?? 5000);
const batch = 250;
const { soak } = await load('tests/engine/explain/soak.ts');
const sum = { found: 0, solved: 0, compared: 0, longest: 0 };
for (let done = 0; done < count; done += batch) {
  const seed = Math.floor(Math.random() * 2 ** 31);
  try {
    const { found, solved, compared, longest } = soak(Math.min(batch, count - done), seed);
    sum.found += found;
    sum.solved += solved;
    sum.compared += compared;
    sum.longest = Math.max(sum.longest, longest);
  } catch (error) {
    console.error(`seed ${seed}: ${error.message}\n${error.cause?.message ?? ''}`);
    process.exit(1);
  }
}
console.log(
  `${count} circuits, ${sum.found} answers found, ${sum.solved} of them by Kirchhoff’s equations, ${sum.compared} compared with the shortest way; the longest had ${sum.longest} steps`,
);
