import { inLatin } from './in-latin.ts';

/**
 * How many letters must be put in, left out or changed, or two neighbours be swapped, to turn one word into another (Levenshtein 1966,
 * Damerau 1964; no letter twice).
 */
function distance(a: string, b: string): number {
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const isSwapped = i > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      const swap = isSwapped ? (before[j - 2] ?? 0) + 1 : Infinity;
      next.push(Math.min(change, swap, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    [before, row] = [row, next];
  }
  return row[b.length] ?? 0;
}

/**
 * The word that was probably meant: the nearest within a third of its letters, or of two or three within one, of several rather one with the same
 * first letter; else ''.
 */
export function nearest(found: string, words: Iterable<string>): string {
  let best = '';
  let least = Infinity;
  if (found.length > 30) return best;
  const sought = inLatin(found).toLowerCase();
  for (const word of words) {
    const isOther = !sought.startsWith(word.charAt(0).toLowerCase());
    const steps = distance(sought, word.toLowerCase());
    const far = steps + (isOther ? 0.5 : 0);
    if (far < least && steps <= word.length / (word.length < 4 ? 2 : 3)) [best, least] = [word, far];
  }
  return best;
}
