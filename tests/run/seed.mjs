/** The seed of all random tests: the same in every run, so that a run can be repeated; `npm run soak` takes others. */
export const seed = Number(process.env.SEED ?? 20_261_127);

/** For esbuild: gives every bundle of tests that seed. */
export const seeded = { define: { SEED: String(seed) }, inject: ['tests/run/seeded.ts'] };
