export { RheoletActivity } from './activity.ts';
