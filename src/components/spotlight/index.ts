export { Spotlight } from './spotlight.ts';
