/** An SI prefix that school circuits use; '' is none. */
export type Prefix = 'p' | 'n' | 'µ' | 'm' | '' | 'k' | 'M' | 'G';

const ladder: readonly Prefix[] = ['p', 'n', 'µ', 'm', '', 'k', 'M', 'G'];

/** The power of ten a prefix stands for (SI Brochure, 9th edition, table 7): `k` is 3, `m` is −3. */
export function exponentOf(prefix: Prefix): number {
  return 3 * ladder.indexOf(prefix) - 12;
}

/** The prefix for a power of ten, which is brought to the nearest lower multiple of three from −12 to 9. */
export function prefixFor(exponent: number): Prefix {
  const rung = Math.floor(exponent / 3) + 4;
  return ladder[Math.min(Math.max(rung, 0), ladder.length - 1)] ?? '';
}
