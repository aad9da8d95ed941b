import { css, type CSSResult } from 'lit';

/** How a control with sliders looks: it is painted by itself while its board moves, and a new value is laid out inside its box alone. */
export const styles: CSSResult = css`
  :host {
    display: inline-flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.25em 0.5em;
    max-inline-size: 100%;
    vertical-align: middle;
    isolation: isolate;
    contain: layout style;
    color: var(--ink);
    font-family: var(--font);
  }
  .dial {
    display: contents;
  }
  [part='slider'] {
    flex: 1 1 9em;
    contain: strict;
    min-inline-size: 7em;
    block-size: max(1.75rem, 24px);
    margin: 0;
    accent-color: var(--ink);
  }
  .exact {
    display: inline-flex;
    contain: layout;
  }
  [part='step'],
  [part='value'] {
    box-sizing: border-box;
    block-size: max(1.75rem, 24px);
    margin: 0;
    padding: 0;
    border: 1px solid var(--line);
    background: var(--paper);
    color: inherit;
    font: inherit;
    text-align: center;
  }
  [part='step'] {
    min-inline-size: max(1.75rem, 24px);
    cursor: pointer;
  }
  [part='step']:disabled {
    color: var(--line);
    cursor: default;
  }
  [part='value'] {
    contain: strict;
    inline-size: 5.5em;
    margin-inline: -1px;
  }
  [aria-invalid] {
    border-color: var(--alert);
    text-decoration: underline wavy var(--alert);
  }
  [part='problem'] {
    color: var(--alert);
    font-size: 0.875em;
  }
  [part='problem']:empty {
    display: none;
  }
  :focus-visible {
    z-index: 1;
    outline: 2px solid var(--focus);
    outline-offset: 1px;
  }
  @media (pointer: coarse) {
    [part='slider'],
    [part='step'],
    [part='value'] {
      block-size: 44px;
    }
    [part='step'] {
      min-inline-size: 44px;
    }
  }
  @media print {
    [part='slider'],
    [part='step'] {
      display: none;
    }
  }
`;
