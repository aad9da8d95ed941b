export { RheoletClaim } from './claim.ts';
