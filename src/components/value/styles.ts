import { css, type CSSResult } from 'lit';

/** How a value in a sentence looks: as wide as the widest it has shown, and heard in words. */
export const styles: CSSResult = css`
  [part='value'] {
    display: inline-grid;
    justify-items: center;
    white-space: nowrap;
    font-weight: 600;
    direction: ltr;
  }
  [part='value']::after {
    content: attr(data-room);
    block-size: 0;
    visibility: hidden;
  }
  .covered {
    border-block-end: 1px dotted var(--ink);
  }
`;
