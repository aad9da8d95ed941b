import type { Course, SaidOf } from '../words/index.ts';

/** How something follows a change. */
interface Follows {
  readonly ids: readonly string[];
  readonly change: 'rises' | 'falls' | 'stays the same';
  /** Whether it stays the same while what was said before does not. */
  readonly but: boolean;
  /** The parts of a potentiometer that alone would do otherwise. */
  readonly against: readonly string[];
}

/** Links of a chain of reasons: what rises or falls next, and of what. */
export interface BecauseData {
  /** The resistance that is turned up. */
  'this resistance rises': { readonly id: string };
  /** The contact of a potentiometer slides: what one part gains the other one loses. */
  'the contact slides': { readonly rises: string; readonly falls: string };
  /** The resistance of several components together. */
  'so their resistance': Follows;
  /** The resistance of all that is outside the supply (`R_total`), or of the loop as a whole. */
  'so the whole': Follows & { readonly name: 'R_total' | 'R_loop' };
  /** The current through components in series, or of one. */
  'so the current': Follows;
  /** The p.d. across one or several components together, in the word of the course. */
  'so the p.d.': Follows & { readonly pd: Course['wording'] };
  /** That a quantity is negative, and so falls while its size, which the links speak of, rises, or the other way round. */
  'counted the other way': { readonly name: string; readonly size: 'rises' | 'falls' };
  /** What was said last is otherwise where the contact of a potentiometer is elsewhere. */
  'elsewhere along the track': { readonly changes: readonly Follows['change'][] };
}

/** A link of a chain of reasons. */
export type Because = SaidOf<BecauseData>;
