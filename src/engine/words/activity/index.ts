import { saying, type Say } from '../say.ts';
import type { ActivityData } from './codes.ts';
import { activity } from './en.ts';

export type { ActivityData };
export { activity };

/** Says what an activity says of itself. */
export const sayActivity: Say<ActivityData> = saying({ tag: 'en', sentences: activity });
