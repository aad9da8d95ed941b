const and = new Intl.ListFormat('en-GB', { type: 'conjunction' });
const or = new Intl.ListFormat('en-GB', { type: 'disjunction' });

/** Components and blocks by their labels; the wire across L1 has the id "L1 bridge". */
const named = (id: string): string =>
  id.replace(/^([^(+∥]+) bridge$/, 'the wire across $1').replace(/[^(+∥]+ bridge/g, 'wire');

/** "R1, R2 and R3" */
export const all = (ids: readonly string[]): string => and.format(ids.map(named));
/** "R1, R2 or R3" */
export const any = (ids: readonly string[]): string => or.format(ids);
/** "R1 is", "R1 and R2 are"; likewise with another verb. */
export const subject = (ids: readonly string[], one = 'is', several = 'are'): string =>
  `${all(ids)} ${ids.length === 1 ? one : several}`;
/** What stands for R1, or for R1 and R2. */
export const them = (ids: readonly string[]): string => (ids.length === 1 ? 'it' : 'them');
