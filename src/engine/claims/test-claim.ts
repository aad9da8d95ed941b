import { hasCurve, settingOf, type Circuit } from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import { meantBy, quantities } from '../solve/index.ts';
import type { ClaimMistake } from './codes.ts';
import { combinations, dials, settingsOf, turned, type Dial } from './dials.ts';
import { alongLine } from './line.ts';
import { Mistaken, readClaim, type Claim } from './read-claim.ts';
import { signIn } from './settle.ts';

/** What has been found out of a claim. */
export interface ClaimVerdict {
  readonly verdict: 'always' | 'never' | 'sometimes' | 'not understood';
  /** Of a claim that holds only sometimes: settings at which it fails, as `withValue` reads them, by id. */
  readonly counterexample?: Readonly<Record<string, string>>;
  /** Whether the verdict is certain for all settings; else only `tried` of them are known. */
  readonly proved: boolean;
  /** Settings at which the claim is known to hold or to fail. */
  readonly tried: number;
  /** Why it is not understood. */
  readonly mistake?: ClaimMistake;
}

/** Settings of all but one slider that are gone through; single settings that are solved, and that with curves. */
const [mostLines, mostSolved, mostCurved] = [256, 4000, 400];

/**
 * Whether left and right are equal at all settings because they are the same function: a polynomial of this degree at most in each slider
 * that is 0 on a grid of one place more in each is 0 everywhere (J. T. Schwartz 1980). False where that is not shown.
 */
function isIdentity(circuit: Circuit, claim: Claim, all: readonly Dial[]): boolean {
  if (circuit.components.some(hasCurve)) return false;
  const grid = all.map((dial): Dial => {
    const places = claim.degree + 1;
    if (!dial.isSlider || places >= dial.last) return dial;
    // Inside the range: at its ends there may be a fault.
    const place = (k: number): number => 1 + Math.floor((k * (dial.last - 2)) / (places - 1));
    return { ...dial, last: places - 1, now: 0, turn: (at, k) => dial.turn(at, place(k)) };
  });
  const count = settingsOf(grid);
  if (count > mostSolved) return false;
  return combinations(grid, count).every((places) => signIn(turned(circuit, grid, places), claim) === 0);
}

/** What the components with a slider or a switch are set to. */
const settingsIn = ({ components }: Circuit, all: readonly Dial[]): Readonly<Record<string, string>> =>
  Object.fromEntries(
    components
      .filter(({ id }) => all.some((dial) => dial.id === id))
      .map((component) => [component.id, settingOf(component)]),
  );

/** Of places at which a claim fails, as many as may be turned back to where they stand now, one after the other. */
const turnedBack = (
  circuit: Circuit,
  claim: Claim,
  all: readonly Dial[],
  places: readonly number[],
): readonly number[] =>
  all.reduce((kept, { now }, k) => {
    const back = kept.with(k, now);
    const sign = signIn(turned(circuit, all, back), claim);
    return sign === undefined || claim.signs.includes(sign) ? kept : back;
  }, places);

/** A slider of one setting, for a circuit that has none. */
const still: Dial = {
  id: '',
  last: 0,
  now: 0,
  at: (place) => new Fraction(place),
  turn: (circuit) => circuit,
  isSlider: false,
};

/** Whether a dial is rather gone along than another one: a slider, whose ratios tell all its settings, and the longer of two. */
const isRather = (dial: Dial, than: Dial): boolean =>
  dial.isSlider === than.isSlider ? dial.last > than.last : dial.isSlider;

/** Decides a claim that can be read over all settings of the sliders and the switches. */
function decide(circuit: Circuit, claim: Claim): ClaimVerdict {
  const all = dials(circuit);
  const main = all.reduce((best, dial) => (isRather(dial, best) ? dial : best), still);
  const others = all.filter((dial) => dial !== main);
  const lines = combinations(others, mostLines);
  let isComplete = lines.length === settingsOf(others);
  let singles = circuit.components.some(hasCurve) ? mostCurved : mostSolved;
  let [tried, holds] = [0, false];
  let counterexample: Readonly<Record<string, string>> | undefined;
  for (const places of lines) {
    const at = turned(circuit, others, places);
    const line = alongLine(at, claim, main, singles);
    isComplete &&= line.tried > main.last;
    singles -= line.singles;
    const known = line.settled.filter(({ sign }) => sign !== undefined);
    if (known.length === 0) continue;
    tried += line.tried;
    const fails = known.filter(({ sign = 0 }) => !claim.signs.includes(sign));
    holds ||= fails.length < known.length;
    const far = ({ place }: { readonly place: number }): number => Math.abs(place - main.now);
    const [nearest] = fails.toSorted((a, b) => far(a) - far(b));
    if (nearest && !counterexample) {
      const back = turnedBack(circuit, claim, [main, ...others], [nearest.place, ...places]);
      counterexample = settingsIn(turned(circuit, [main, ...others], back), all);
    }
    if (holds && counterexample) return { verdict: 'sometimes', counterexample, proved: true, tried };
  }
  if (!holds && !counterexample) {
    const wrong = { code: 'claim has no value', data: {} } as const;
    return {
      verdict: 'not understood',
      proved: isComplete,
      tried,
      mistake: { wrong, at: 0, end: 0, suggestion: '' },
    };
  }
  return {
    verdict: holds ? 'always' : 'never',
    proved: isComplete || isIdentity(circuit, claim, all),
    tried,
  };
}

/**
 * Tests a statement over quantity names (`I_A1 + I_A2 = I_A3`, `R_total < R_R2`, `V_R1 = 2 V_R2`) at all settings of the sliders and the
 * switches of a circuit; settings at which it has no value are left out. Exact, but for circuits with curves. Throws nothing.
 */
export function testClaim(circuit: Circuit, text: string): ClaimVerdict {
  try {
    return decide(
      circuit,
      readClaim(text, quantities(circuit), (name) => meantBy(name, circuit)),
    );
  } catch (error) {
    if (!(error instanceof Mistaken)) throw error;
    return { verdict: 'not understood', proved: true, tried: 0, mistake: error.mistake };
  }
}
