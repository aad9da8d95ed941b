import { checkRules, ruleLine, type RuleCheck, type RuleLine } from '../../engine/index.ts';
import { figuresOf, type Snapshot } from '../link/index.ts';

/** One rule at one place of the circuit, ready to be shown. */
export interface Line extends RuleLine {
  /** The same as long as it is the same rule at the same place. */
  readonly key: string;
  readonly check: RuleCheck;
}

/** A check whose numbers are all for the pupil to find. */
function covered(check: RuleCheck): RuleCheck {
  const { substituted } = check;
  if (!substituted) return check;
  const sides = substituted.sides.map((side) => side.map((term) => ({ ...term, hidden: true }) as const));
  return { ...check, substituted: { ...substituted, sides } };
}

/** Every rule on a board: where it holds, then where it does not apply, as the board's course writes it. */
export function linesOf(snapshot: Snapshot): readonly Line[] {
  const { circuit, readings, course } = snapshot;
  const style = { ...course, figures: figuresOf(snapshot) };
  return checkRules(circuit, readings).map((check) => ({
    ...ruleLine(snapshot.covered ? covered(check) : check, style),
    check,
    key: [check.rule, check.substituted?.form, ...check.about].join(' '),
  }));
}
