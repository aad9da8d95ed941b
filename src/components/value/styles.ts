import { css, type CSSResult } from 'lit';

/** How a value in a sentence looks: as wide as the widest it has shown, and heard in words. */
export const styles: CSSResult = css`
  [part='value'],
  [part='change'] {
    display: inline-grid;
    justify-items: center;
    direction: ltr;
  }
  [part='value'] {
    white-space: nowrap;
    font-weight: 600;
  }
  [part='change'] {
    justify-items: start;
    margin-inline-start: 0.4em;
    font-size: 0.8125em;
    color: var(--soft);
  }
  [data-room]::after {
    content: attr(data-room);
    block-size: 0;
    visibility: hidden;
  }
  .covered {
    border-block-end: 1px dotted var(--ink);
  }
`;
