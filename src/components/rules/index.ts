export { RheoletRules } from './rules.ts';
