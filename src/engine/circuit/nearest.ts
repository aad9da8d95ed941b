/** How many letters must be put in, left out or changed to turn one word into another (Levenshtein 1966). */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}

/** The word that was probably meant: the nearest within half of its letters, else ''. */
export function nearest(found: string, words: Iterable<string>): string {
  let best = '';
  let least = Infinity;
  if (found.length > 30) return best;
  for (const word of words) {
    const steps = distance(found.toLowerCase(), word.toLowerCase());
    if (steps < least && steps <= word.length / 2) [best, least] = [word, steps];
  }
  return best;
}
