import type { TemplateResult } from 'lit';
import type { Said } from '../../engine/core.ts';
import { readingOf, type ChangeText, type ReadingStyle, type Snapshot } from '../link/index.ts';

/** What a meter shows of its quantity. */
export interface Indication {
  /** "0.450 A", "no current", "—", "?", "overload". */
  readonly text: string;
  /** The same as it is heard. */
  readonly spoken: string;
  /** In place of digits. */
  readonly dial: TemplateResult | undefined;
  /** What the reading has done since it was held. */
  readonly change: ChangeText | undefined;
  /** What of the page's wishes cannot be had. */
  readonly mistake: Said | undefined;
}

/** What digits without end show of a quantity. */
export function digitsOf(snapshot: Snapshot, quantity: string, style: ReadingStyle): Indication {
  const { text, spoken } = readingOf(snapshot, quantity, style);
  const change = snapshot.comparison?.changeOf(snapshot, quantity, style);
  return { text, spoken, dial: undefined, change, mistake: undefined };
}
