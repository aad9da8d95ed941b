export { extremesOf, type Extreme } from './extremes.ts';
