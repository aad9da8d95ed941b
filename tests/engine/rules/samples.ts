import fc from 'fast-check';
import { circuitToJSON, type Circuit } from '../../../src/engine/circuit/index.ts';
import { checkRules, type RuleCheck } from '../../../src/engine/rules/index.ts';
import { withConditions } from '../topology/conditions.ts';
import { random } from './random-circuit.ts';

/** A random circuit, in half of them some components taken out or bridged, with its rules, checked exactly. */
export interface Sample {
  readonly circuit: Circuit;
  readonly checks: readonly RuleCheck[];
}

const conditions = fc.array(
  fc.oneof(
    { weight: 6, arbitrary: fc.constant(undefined) },
    { weight: 1, arbitrary: fc.constantFrom('broken' as const, 'bridged' as const) },
  ),
  { minLength: 26, maxLength: 26 },
);

/** A thousand random circuits, which all laws of the rules share. */
export const samples: readonly Sample[] = fc
  .sample(fc.tuple(random, fc.oneof(fc.constant([]), conditions)), 1000)
  .map(([whole, list]) => {
    const circuit = withConditions(whole, (_, place) => list[place]);
    return { circuit, checks: checkRules(circuit) };
  });

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
