/** What the elements say of themselves: names of controls, states and what goes wrong on a page (filled in with the elements). */
export interface ElementData {
  'no board': { readonly wanted: string; readonly present: readonly string[] };
}
