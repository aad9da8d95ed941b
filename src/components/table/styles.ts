import { css, type CSSResult } from 'lit';

/** A ruled table as on an exam paper; it scrolls in a box of its own where the column is narrow. */
export const styles: CSSResult = css`
  :host {
    display: inline-block;
    max-inline-size: 100%;
    vertical-align: top;
    font-family: var(--font);
    color: var(--ink);
  }
  .scroll {
    overflow-x: auto;
  }
  .scroll:focus-visible {
    outline-offset: -2px;
  }
  table {
    border-collapse: collapse;
    background: var(--paper);
  }
  caption {
    margin-block-end: 0.4em;
    text-align: start;
  }
  th,
  td {
    box-sizing: border-box;
    min-inline-size: 4.75em;
    block-size: 2em;
    padding: 0.2em 0.4em;
    border: 1px solid var(--ink);
    font-weight: normal;
    text-align: center;
    white-space: nowrap;
  }
  thead th {
    font-weight: 600;
  }
  sub {
    font-size: 0.75em;
    line-height: 1;
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
  .buttons {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.4em;
    margin-block-start: 0.5em;
  }
  [part='delete'] {
    padding: 0;
    border-color: transparent;
  }
  textarea {
    box-sizing: border-box;
    display: block;
    inline-size: 100%;
    min-block-size: 7em;
    margin-block-start: 0.5em;
    border: 1px solid var(--line);
    background: var(--paper);
    color: inherit;
    font: inherit;
    direction: ltr;
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
    .buttons,
    .act,
    textarea {
      display: none;
    }
    .scroll {
      overflow: visible;
    }
    tr {
      break-inside: avoid;
    }
  }
`;
