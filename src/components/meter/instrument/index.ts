export { indicationOn } from './indication-on.ts';
