import { css, type CSSResult } from 'lit';

/**
 * Ink on paper: the colours and the type of every element, in both schemes, in forced colours and on paper; what is only heard.
 * On paper everything is black, whatever colours a page has, but for the ribbons, which are of a grey that shows what is drawn on them.
 * A page's own way with letters stops at the elements: capitals would make other units of them (mA, MA), wide ones run into wires.
 *
 * @cssprop --rheolet-ink - Lines, symbols and text.
 * @cssprop --rheolet-soft - Text that stands back.
 * @cssprop --rheolet-line - Rules and borders.
 * @cssprop --rheolet-paper - The ground.
 * @cssprop --rheolet-current - The hue of current: the ribbons.
 * @cssprop --rheolet-potential - The hue of potential.
 * @cssprop --rheolet-alert - What is wrong, and what to beware of.
 * @cssprop --rheolet-focus - The outline of what has the focus.
 * @cssprop --rheolet-font - The typeface.
 */
export const ink: CSSResult = css`
  :host {
    --ink: var(--rheolet-ink, light-dark(#1d1b1c, #ece9e6));
    --soft: var(--rheolet-soft, light-dark(#5c5759, #b3adaa));
    --line: var(--rheolet-line, light-dark(#8a8486, #837d7a));
    --paper: var(--rheolet-paper, light-dark(#fffefb, #191718));
    --current: var(--rheolet-current, light-dark(#a8519c, #b0699f));
    --potential: var(--rheolet-potential, light-dark(#0d6c7a, #58b3c1));
    --alert: var(--rheolet-alert, light-dark(#8d2f00, #f0a070));
    --focus: var(--rheolet-focus, light-dark(#0d6c7a, #7fd0dc));
    --font: var(--rheolet-font, system-ui, sans-serif);
    font-variant-numeric: tabular-nums lining-nums;
  }
  :host([hidden]) {
    display: none;
  }
  :host > * {
    font-style: normal;
    font-variant-caps: normal;
    letter-spacing: normal;
    word-spacing: normal;
    text-indent: 0;
    text-shadow: none;
    text-transform: none;
    white-space: normal;
  }
  :focus-visible {
    outline: 2px solid var(--focus);
  }
  .heard {
    position: absolute;
    inline-size: 1px;
    block-size: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
    user-select: none;
  }
  [part='problem'] {
    color: var(--alert);
  }
  @media (forced-colors: active) {
    :host {
      --ink: CanvasText;
      --soft: CanvasText;
      --line: GrayText;
      --paper: Canvas;
      --current: color-mix(in srgb, Highlight 60%, Canvas); /* what is drawn on it is seen */
      --potential: LinkText;
      --alert: CanvasText;
      --focus: Highlight;
    }
  }
  @media print {
    :host {
      --ink: #000;
      --soft: #000;
      --line: #000;
      --paper: transparent;
      --current: #b3b3b3;
      --potential: #000;
      --alert: #000;
      color-scheme: light;
    }
  }
`;
