export { RheoletTable } from './table.ts';
