/** Why a rule applies, or why it does not (filled in with the rules). */
export interface RuleData {
  'one path': { readonly ids: readonly string[] };
}
