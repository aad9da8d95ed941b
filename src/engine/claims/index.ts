export { claimNow, type ClaimNow } from './claim-now.ts';
export type { ClaimData, ClaimMistake, ClaimWrong } from './codes.ts';
export { turnable, unset } from './dials.ts';
export { testClaim, type ClaimVerdict } from './test-claim.ts';
