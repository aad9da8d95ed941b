import { css, type CSSResult } from 'lit';

/** How an activity looks: nothing of its own in the page; over the whole window black on white, for a projector in a lit room. */
export const styles: CSSResult = css`
  :host {
    display: block;
  }
  .full {
    position: fixed;
    z-index: 2147483647;
    inset: 0;
    box-sizing: border-box;
    overflow: auto;
    padding: 12px;
    background: #fff;
    color: #000;
    color-scheme: light;
    font: 14px/1.4 var(--font);
    --rheolet-ink: #000;
    --rheolet-soft: #000;
    --rheolet-line: #000;
    --rheolet-paper: #fff;
    --rheolet-potential: #004f5a;
    --rheolet-alert: #7a2400;
  }
  [part='bar'] {
    display: flex;
    gap: 0.5rem;
    align-items: center;
    justify-content: end;
    margin-block-start: 0.5rem;
    font-family: var(--font);
    color: var(--ink);
  }
  .full [part='bar'] {
    font-size: 10px;
  }
  @media print {
    [part='bar'] {
      display: none;
    }
  }
`;
