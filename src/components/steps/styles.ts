import { css, type CSSResult } from 'lit';

/** A solution in ink: a numbered list, the number that each step gives at its end. */
export const styles: CSSResult = css`
  :host {
    display: block;
    font-family: var(--font);
    line-height: 1.45;
    color: var(--ink);
  }
  p,
  ol {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .later {
    display: none;
  }
  .one {
    display: inline-block;
    margin-inline-end: 1.25em;
  }
  [part='given'],
  [part='find'] {
    position: relative;
    padding-inline-start: 4.3em; /* the heading, and the space after it */
  }
  strong {
    display: inline-block;
    margin-inline-start: -4.3em;
    min-inline-size: 4em;
  }
  ol {
    margin-block: 0.5em;
    counter-reset: step;
  }
  li {
    position: relative;
    padding: 0.35em 0.75em 0.35em 2.5em;
    overflow-x: auto;
    border-block-start: 1px solid var(--line);
    counter-increment: step;
  }
  li::before {
    content: counter(step);
    position: absolute;
    inset-inline-start: 0;
    inline-size: 1.75em;
    text-align: end;
    font-weight: 600;
  }
  li:is(:hover, :focus, :focus-within) {
    box-shadow: inset 3px 0 var(--ink);
  }
  li:focus-visible {
    outline-offset: -2px;
  }
  svg {
    float: inline-end;
    max-inline-size: 100%;
    block-size: auto;
    font-family: inherit;
  }
  li::after {
    content: '';
    display: block;
    clear: both;
  }
  [part='why'],
  [part='note'],
  [part='look'],
  [part='count'] {
    font-size: 0.875em;
    color: var(--soft);
  }
  [part~='answer'] {
    padding-block-end: 0.3em;
    border-block-end: 3px double;
    font-weight: 600;
  }
  [part='gap'] {
    box-sizing: border-box;
    block-size: max(1.75rem, 24px);
    max-inline-size: 6em;
    margin: 0;
    padding: 0 0.4em;
    border: 1px solid var(--line);
    background: var(--paper);
    color: inherit;
    font: inherit;
  }
  [aria-invalid] {
    border-color: var(--alert);
  }
  [part='mistake'] {
    display: block;
    color: var(--alert);
  }
  [part='reason'] {
    padding-inline-start: 0.75em;
    border-inline-start: 3px solid var(--alert);
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0.4em;
  }
  @media (pointer: coarse) {
    [part='gap'] {
      block-size: 44px;
    }
  }
  @media print {
    .later {
      display: revert;
    }
    .row {
      display: none;
    }
    li {
      break-inside: avoid;
    }
    [part='gap'] {
      border-width: 0 0 1px;
    }
  }
`;
