import { css, type CSSResult } from 'lit';

/** How a switch looks. */
export const styles: CSSResult = css`
  :host {
    display: inline-flex;
    max-inline-size: 100%;
    vertical-align: middle;
    color: var(--ink);
    font-family: var(--font);
  }
  [part='switch'] {
    display: inline-flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.25em 0.5em;
    min-block-size: max(1.75rem, 24px);
    margin: 0;
    padding-inline: 0.6em;
    border: 1px solid var(--line);
    border-radius: 2px;
    background: var(--paper);
    color: inherit;
    font: inherit;
    cursor: pointer;
  }
  [part='switch']:disabled {
    color: var(--line);
    cursor: default;
  }
  [part='symbol'] {
    fill: none;
    stroke: currentColor;
    stroke-width: 1.75;
  }
  /* As wide as its other word: nothing beside it moves. */
  [part='state'] {
    min-inline-size: 3.5em;
    text-align: start;
  }
  :focus-visible {
    outline-offset: 1px;
  }
  @media (pointer: coarse) {
    [part='switch'] {
      min-block-size: 44px;
    }
  }
`;
