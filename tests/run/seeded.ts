// Stands before all tests in their bundle.
import fc from 'fast-check';

/** What the runner puts in (see `seed.mjs`). */
declare const SEED: number;

fc.configureGlobal({ seed: SEED });
