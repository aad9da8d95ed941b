import type { Said } from '../reasons/index.ts';
import type { Course } from '../words/index.ts';

/** How something follows a change; `but` where it stays the same while what was said before does not. */
interface Follows {
  readonly ids: readonly string[];
  readonly change: 'rises' | 'falls' | 'stays the same';
  readonly but: boolean;
}

/** Links of a chain of reasons: what rises or falls next, and of what. */
export interface BecauseData {
  /** The resistance that is turned up. */
  'this resistance rises': { readonly id: string };
  /** The resistance of several components together. */
  'so their resistance rises': { readonly ids: readonly string[] };
  /** The current through components in series, or of one. */
  'so the current': Follows;
  /** The p.d. across one or several components together, in the word of the course. */
  'so the p.d.': Follows & { readonly pd: Course['wording'] };
}

/** A link of a chain of reasons. */
export type Because = Said<keyof BecauseData>;
