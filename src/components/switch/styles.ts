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
`;
