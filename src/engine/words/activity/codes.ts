/** What an activity says of itself. */
export interface ActivityData {
  /** A button of an activity. */
  'activity button': { readonly does: 'fill' | 'leave' | 'next' | 'back' };
  /** How many parts of an activity are shown now. */
  revealed: { readonly shown: number; readonly count: number };
}
