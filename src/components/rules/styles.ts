import { css, type CSSResult } from 'lit';

/** A list in ink: each rule in words, under it the places where it holds. */
export const sheet: CSSResult = css`
  :host {
    display: block;
    font-family: var(--font);
    line-height: 1.45;
    color: var(--ink);
  }
  p,
  ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  [part='rule'] {
    margin-block: 1em 0.25em;
    padding-block-start: 0.5em;
    border-block-start: 1px solid var(--line);
    font-weight: 600;
    text-wrap: balance;
  }
  [part='line'] {
    position: relative;
    padding: 0.3em calc(0.75em + 3px);
  }
  [part='line']:is(:hover, :focus) {
    padding-inline-start: 0.75em;
    border-inline-start: 3px solid;
  }
  [part='line']:focus-visible {
    outline-offset: -2px;
  }
  [part='why'],
  [part='verdict'],
  summary {
    font-size: 0.875em;
    color: var(--soft);
  }
  .check {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0.25em 1.75em;
  }
  [part='verdict'] {
    margin-inline-start: auto;
  }
  summary {
    margin-block-start: 1em;
    padding-block: 0.35em;
    cursor: default;
  }
  [part='obstacle'] {
    padding-inline-start: 0.75em;
    border-inline-start: 3px solid var(--alert);
  }
  [part='work'] {
    border: none;
    padding-inline: 0;
    background: none;
    font-size: 0.875em;
    text-decoration: underline;
  }
  rheolet-steps {
    display: block;
    margin-block: 0.5em;
  }
  table {
    margin-block: 0.5em;
    border-collapse: collapse;
  }
  th,
  td {
    padding: 0.2em 0.4em;
    border: 1px solid var(--line);
    text-align: start;
    font-weight: normal;
  }
  th {
    position: relative;
  }
  td:has(input) {
    white-space: nowrap;
  }
  small {
    display: block;
  }
  input {
    box-sizing: border-box;
    block-size: max(1.75rem, 24px);
    max-inline-size: 4em;
    margin: 0;
    border: 1px solid var(--line);
    background: var(--paper);
    color: inherit;
    font: inherit;
  }
  @media print {
    button {
      display: none;
    }
    input {
      border: none;
    }
    summary {
      list-style: none;
    }
    details::details-content {
      content-visibility: visible;
      block-size: auto;
    }
    [part='line'] {
      break-inside: avoid;
    }
    [part='rule'] {
      break-after: avoid;
    }
  }
`;
