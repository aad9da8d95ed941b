export { RheoletSurroundings } from './surroundings.ts';
