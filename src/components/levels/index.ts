export { RheoletLevels } from './levels.ts';
