import { equipEquations } from './equations.ts';

/** Loads what sets up Kirchhoff's equations; until then `explain` finds only what a chain of single rules leads to. */
export async function prepareEquations(): Promise<void> {
  const { kirchhoff } = await import('./kirchhoff/index.ts');
  equipEquations(kirchhoff);
}
