/** What is said of quantities that are written beside components. */
export interface WrittenData {
  /** A word of `quantities` that is no current or p.d. of a component, and the label of one; `half` where it is one of half a symbol. */
  'not to be written': {
    readonly found: string;
    readonly like: string;
    readonly half: 'changeover' | 'potentiometer' | undefined;
  };
  /** What is written beside the components of a drawing: what it is called, and its reading in words, '' where none is shown. */
  written: {
    readonly quantities: readonly {
      readonly called: string;
      readonly shows: 'symbol' | 'reading' | 'blank';
      readonly reading: string;
    }[];
  };
}
