import { withValue } from '../../engine/core.ts';
import { claimNow, turnable, type ClaimVerdict } from '../../engine/claims/index.ts';
import { say } from '../../engine/reasons/index.ts';
import { changesOf, type Settings, type Snapshot } from '../link/index.ts';
import { sidesText } from './sides.ts';

/** What was found out of a claim, as a sentence; '' where it was not understood. */
export function verdictText({ circuit }: Snapshot, { verdict, proved, tried }: ClaimVerdict): string {
  if (verdict === 'not understood') return '';
  return say({ code: 'verdict', data: { verdict, proved, tried, turned: turnable(circuit) } });
}

/** Where a claim fails: what is set otherwise there than now. What is hidden of a component is not told. */
export function failsText({ circuit }: Snapshot, counterexample: Settings): string {
  const there = Object.entries(counterexample).reduce(
    (at, [id, setting]) => withValue(at, id, setting),
    circuit,
  );
  const hidden = circuit.components.filter((each) => each.hidden).map(({ id }) => id);
  const settings = changesOf('', circuit, there).map((change) => ({
    ...change,
    text: change.quantity && hidden.includes(change.id) ? '?' : change.text,
  }));
  return say({ code: 'fails at', data: { settings } });
}

/** Whether a claim holds as the board stands, with both sides; '' where they have no value or are the pupil's to find. */
export function nowText(snapshot: Snapshot, claim: string): string {
  const { circuit, covered } = snapshot;
  const isTold = circuit.components.some(
    ({ id, kind, hidden }) =>
      hidden && new RegExp(`${kind === 'source' ? 'I' : '[REr]'}_${id}\\b`).test(claim),
  );
  const now = covered || isTold ? undefined : claimNow(circuit, claim);
  if (!now) return '';
  const { left, right } = sidesText(snapshot, now);
  const alike = left === right && !now.left.equals(now.right);
  return say({ code: 'claim now', data: { left, right, holds: now.holds, alike } });
}
