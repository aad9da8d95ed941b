export type { ClaimData, ClaimMistake, ClaimWrong } from './codes.ts';
export { testClaim, type ClaimVerdict } from './test-claim.ts';
