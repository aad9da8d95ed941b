import { css, type CSSResult } from 'lit';

/** Formulas in the type of what is round them. */
export const formulas: CSSResult = css`
  math {
    font: inherit;
    math-style: normal;
  }
  mi {
    font-style: italic;
  }
  msub > mtext {
    translate: 0 0.2em;
  }
  mfrac {
    margin-block: 0.2em;
  }
  mfrac > * {
    padding-block: 0.15em;
  }
`;
