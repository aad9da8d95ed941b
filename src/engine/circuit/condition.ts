import type { Condition } from './model.ts';

/** The words for what may be done to a component. */
export const conditions: readonly Condition[] = ['broken', 'bridged'];

/** Whether a value is such a word. */
export function isCondition(value: unknown): value is Condition {
  return conditions.some((condition) => condition === value);
}
