import { ruleLine, type RuleCheck, type RuleLine, type Term } from '../../engine/core.ts';
import { figuresOf, type Snapshot } from '../link/index.ts';

/** A line of the list. */
export interface Line {
  /** The same as long as it says the same of the same place. */
  readonly key: string;
  /** The components to be lit up. */
  readonly about: readonly string[];
  /** Why it applies there, or why it does not. */
  readonly why: string;
}

/** A rule that holds at one place. */
export interface Holding extends Line, RuleLine {
  /** The quantities of its equation. */
  readonly terms: readonly Term[];
}

/** Rules that do not apply, for one reason. */
export interface Refusal extends Line {
  /** The rules in words. */
  readonly rules: readonly string[];
}

/** A check whose numbers are all for the pupil to find. */
function covered(check: RuleCheck): RuleCheck {
  const { substituted } = check;
  if (!substituted) return check;
  const sides = substituted.sides.map((side) => side.map((term) => ({ ...term, hidden: true }) as const));
  return { ...check, substituted: { ...substituted, sides } };
}

/** The lines of the rules that hold, as the board's course writes them; without their numbers where the pupil is to find these. */
export function holdingOf(
  snapshot: Snapshot,
  checks: readonly RuleCheck[],
  predict: boolean,
): readonly Holding[] {
  const style = { ...snapshot.course, figures: figuresOf(snapshot) };
  return checks
    .filter(({ status }) => status === 'holds')
    .map((check) => ({
      ...ruleLine(snapshot.covered || predict ? covered(check) : check, style),
      key: [check.rule, check.substituted?.form, ...check.about].join(' '),
      about: check.about,
      terms: check.substituted?.sides.flat() ?? [],
    }));
}

/** The rules that do not apply, those with the same reason in one line. */
export function refusalsOf({ course }: Snapshot, checks: readonly RuleCheck[]): readonly Refusal[] {
  const byReason = new Map<string, Refusal>();
  for (const check of checks.filter(({ status }) => status !== 'holds')) {
    const { rule, why } = ruleLine(check, { wording: course.wording });
    const { rules = [], about = [] } = byReason.get(why) ?? {};
    const all = new Set([...about, ...check.about]);
    byReason.set(why, { key: why, about: [...all], why, rules: [...rules, rule] });
  }
  return [...byReason.values()];
}
