const and = new Intl.ListFormat('en-GB', { type: 'conjunction' });
const or = new Intl.ListFormat('en-GB', { type: 'disjunction' });

/** "R1, R2 and R3" */
export const all = (ids: readonly string[]): string => and.format(ids);
/** "R1, R2 or R3" */
export const any = (ids: readonly string[]): string => or.format(ids);
