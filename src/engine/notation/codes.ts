/** The mistakes a line of notation can hold (filled in with the parser). */
export interface MistakeData {
  'unexpected character': { readonly found: string };
}
