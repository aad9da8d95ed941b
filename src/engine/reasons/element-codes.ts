/** What is set otherwise somewhere: `R_R1` is "2 Ω", S1 is "open". */
export interface SettingThere {
  readonly id: string;
  /** '' for a switch. */
  readonly quantity: string;
  readonly text: string;
}

/** What the elements say that reason: of a claim, and of a worked solution. */
export interface ReasoningElementData {
  /** A statement to be tested, by its name on the page. */
  statement: Record<never, never>;
  'claim button': { readonly does: 'test' | 'go' };
  /** A button that writes what was probably meant. */
  'write so': { readonly text: string };
  /** What was found out of a claim, and what can be turned. */
  verdict: {
    readonly verdict: 'always' | 'never' | 'sometimes';
    readonly proved: boolean;
    readonly tried: number;
    readonly turned: readonly string[];
  };
  /** Where a claim fails: what would be set otherwise there; nothing where it fails as it is. */
  'fails at': { readonly settings: readonly SettingThere[] };
  /** Both sides of a claim as the board stands, and whether it holds; `alike` where they differ in no figure that is written. */
  'claim now': {
    readonly left: string;
    readonly right: string;
    readonly holds: boolean;
    readonly alike: boolean;
  };
  /** A sign of a statement, to be heard. */
  sign: { readonly sign: string };
}
