export { RheoletSupply } from './supply.ts';
