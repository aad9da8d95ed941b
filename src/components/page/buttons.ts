import { css, type CSSResult } from 'lit';

/** Buttons in ink: large enough to press under any root size, and for fingers where the pointer is coarse. */
export const buttons: CSSResult = css`
  button {
    min-inline-size: max(1.75rem, 24px);
    min-block-size: max(1.75rem, 24px);
    margin: 0;
    padding: 0 0.6em;
    border: 1px solid var(--line);
    border-radius: 2px;
    background: var(--paper);
    color: inherit;
    font: inherit;
    unicode-bidi: plaintext;
    cursor: pointer;
  }
  button:disabled {
    border-style: dashed;
    color: var(--line);
    cursor: default;
  }
  button:focus-visible {
    outline-offset: 1px;
  }
  @media (pointer: coarse) {
    button {
      min-inline-size: 44px;
      min-block-size: 44px;
    }
  }
`;
