import fc from 'fast-check';
import { circuitToJSON, type Circuit } from '../../../src/engine/circuit/index.ts';
import { checkRules, type RuleCheck } from '../../../src/engine/rules/index.ts';
import { random } from './random-circuit.ts';

/** A random circuit with its rules, checked exactly. */
export interface Sample {
  readonly circuit: Circuit;
  readonly checks: readonly RuleCheck[];
}

/** Two thousand random circuits, new ones every run, which all laws of the rules share. */
export const samples: readonly Sample[] = fc
  .sample(random, 2000)
  .map((circuit) => ({ circuit, checks: checkRules(circuit) }));

/** Tries a law on every sample; a failure tells the circuit, to be tried again. */
export function everySample(law: (sample: Sample) => void): void {
  for (const sample of samples) {
    try {
      law(sample);
    } catch (cause) {
      throw new Error(`Fails for ${JSON.stringify(circuitToJSON(sample.circuit))}: ${String(cause)}`, {
        cause,
      });
    }
  }
}
