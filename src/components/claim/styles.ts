import { css, type CSSResult } from 'lit';

/** A box to write in, statements to pick from, and what was found out under them. */
export const styles: CSSResult = css`
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
  label {
    display: block;
    margin-block-end: 0.25em;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4em;
  }
  ul.row {
    margin-block-start: 0.5em;
  }
  [part='statement'] {
    box-sizing: border-box;
    flex: 1 1 12em;
    min-inline-size: 0;
    max-inline-size: 28em;
    block-size: max(1.75rem, 24px);
    margin: 0;
    padding: 0 0.4em;
    border: 1px solid var(--line);
    background: var(--paper);
    color: inherit;
    font: inherit;
  }
  [part='statement']:focus-visible {
    outline-offset: 1px;
  }
  [aria-invalid] {
    border-color: var(--alert);
  }
  [part='choice'] {
    position: relative;
    max-inline-size: 100%;
    overflow-wrap: anywhere;
  }
  [part='choice'][aria-pressed='true'] {
    border-color: var(--ink);
    box-shadow: inset 0 0 0 1px var(--ink);
  }
  sub {
    font-size: 0.75em;
    line-height: 1;
  }
  .found > * {
    margin-block-start: 0.5em;
  }
  .found > :empty {
    display: none;
  }
  [part='verdict'] {
    padding-inline-start: 0.75em;
    border-inline-start: 3px solid;
  }
  [part='now'] {
    font-size: 0.875em;
    color: var(--soft);
  }
  [part='mistake'] {
    overflow-wrap: anywhere;
  }
  mark {
    background: none;
    color: inherit;
    border-block-end: 3px solid var(--alert);
  }
  @media (forced-colors: active) {
    [part='choice'][aria-pressed='true'] {
      outline: 1px solid;
    }
  }
  @media (pointer: coarse) {
    [part='statement'] {
      block-size: 44px;
    }
  }
  @media print {
    button {
      display: none;
    }
    [part='choice'] {
      display: block;
      border: none;
      padding: 0;
    }
  }
`;
