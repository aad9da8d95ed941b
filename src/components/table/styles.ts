import { css, type CSSResult } from 'lit';

/** What only a table that is filled in or recorded has, beside what all tables have. */
export const styles: CSSResult = css`
  :host {
    display: inline-block;
    max-inline-size: 100%;
    vertical-align: top;
    font-family: var(--font);
    color: var(--ink);
  }
  caption {
    margin-block-end: 0.4em;
    text-align: start;
  }
  th,
  td {
    min-inline-size: 4.75em;
    block-size: 2em;
  }
  small {
    display: block;
    color: var(--soft);
    white-space: normal;
  }
  td:has(input) {
    padding: 0;
  }
  input {
    box-sizing: border-box;
    inline-size: 4.5em;
    min-inline-size: 100%;
    block-size: 2.25em;
    margin: 0;
    padding: 0 0.25em;
    border: none;
    background: none;
    color: inherit;
    font: inherit;
    text-align: center;
  }
  input:focus-visible {
    outline-offset: -2px;
  }
  .act {
    min-inline-size: 0;
    padding: 0 0 0 0.25em;
    border: none;
  }
  [part='delete'] {
    padding: 0;
    border-color: transparent;
  }
  p {
    margin: 0.4em 0 0;
  }
  @media (max-width: 30em) {
    th,
    td {
      min-inline-size: 3.25em;
      padding-inline: 0.2em;
      font-size: 0.875em;
    }
    td {
      white-space: normal;
    }
    input {
      inline-size: 3em;
    }
  }
  @media (pointer: coarse) {
    input {
      min-inline-size: 44px;
      min-block-size: 44px;
    }
  }
  @media print {
    .act {
      display: none;
    }
  }
`;
