import type { Sentences } from '../language.ts';
import type { ActivityData } from './codes.ts';

const activityButtons = {
  fill: 'Fill the screen',
  leave: 'Leave (Esc)',
  next: 'Show the next part',
  back: 'Cover it again',
};

/** What an activity says of itself. */
export const activity: Sentences<ActivityData> = {
  'activity button': ({ does }) => activityButtons[does],
  revealed: ({ shown, count }) => `${shown} of ${count} parts shown.`,
};
