import { css, type CSSResult } from 'lit';

/** A row for each slider of a control that has two, its symbol or its word before it. */
export const rows: CSSResult = css`
  .dial {
    display: inline-flex;
    flex-wrap: wrap;
    align-items: center;
    gap: inherit;
    max-inline-size: 100%;
  }
  [part='slider'] {
    flex-basis: 7em; /* a row fits a telephone */
  }
  var {
    inline-size: 1ch;
    font-family: serif;
    font-size: 1.125em;
    text-align: end;
  }
  /* One under the other, the sliders begin at one place. */
  .dial:has(~ .dial) .word,
  .dial ~ .dial .word {
    min-inline-size: 6em;
  }
`;
