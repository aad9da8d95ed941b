import type { Circuit } from '../circuit/index.ts';
import type { Fraction } from '../quantity/index.ts';
import { meantBy, quantities } from '../solve/index.ts';
import { Mistaken, readClaim } from './read-claim.ts';
import { sidesIn } from './settle.ts';

/** A claim at one setting. */
export interface ClaimNow {
  readonly holds: boolean;
  /** In SI units. */
  readonly left: Fraction;
  readonly right: Fraction;
  /** Of both sides: "V", "V²/A"; '' for bare numbers. */
  readonly unit: string;
}

/** Whether a statement holds in a circuit as it is set, and what its sides are there; undefined where it has no value or is not understood. */
export function claimNow(circuit: Circuit, text: string): ClaimNow | undefined {
  try {
    const claim = readClaim(text, quantities(circuit), (name) => meantBy(name, circuit));
    const sides = sidesIn(circuit, claim);
    if (!sides) return undefined;
    const { left, right, sign } = sides;
    return { holds: claim.signs.includes(sign), left, right, unit: claim.unit };
  } catch (error) {
    if (!(error instanceof Mistaken)) throw error;
    return undefined;
  }
}
