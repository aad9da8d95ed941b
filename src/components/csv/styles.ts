import { css, type CSSResult } from 'lit';

/** A ruled table as on an exam paper, which scrolls in a box of its own where the column is narrow, what opens it, and how it goes out. */
export const styles: CSSResult = css`
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
  th,
  td {
    box-sizing: border-box;
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
  summary {
    inline-size: fit-content;
    min-block-size: 24px;
    cursor: pointer;
  }
  .buttons {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.4em;
    margin-block-start: 0.5em;
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
  @media (pointer: coarse) {
    summary {
      min-block-size: 44px;
    }
  }
  @media print {
    .buttons,
    textarea,
    details:not([open]) {
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
