import { css, type CSSResult } from 'lit';

/** Squared paper in hairlines, axes and curves in ink; nothing has the hue of current or of potential here. */
export const styles: CSSResult = css`
  :host {
    display: block;
    max-inline-size: 100%;
    font-family: var(--font);
    color: var(--ink);
  }
  p {
    margin: 0;
  }
  [part='up'],
  [part='along'] {
    max-inline-size: 640px;
    direction: ltr;
    text-align: left;
    font-size: 0.875em;
  }
  [part='along'] {
    text-align: center;
  }
  /* What is drawn at one width must not keep its page from getting narrower: it is 640px where there is room, 240px at the least. */
  [part='plane'] {
    display: grid;
    grid-template-columns: minmax(240px, 640px);
    inline-size: fit-content;
    max-inline-size: 100%;
    overflow-x: auto;
    direction: ltr;
    touch-action: pan-y;
    cursor: crosshair;
  }
  svg {
    display: block;
    fill: none;
    pointer-events: none;
  }
  svg text {
    font-size: 13px;
    fill: var(--ink);
  }
  .mark {
    text-anchor: middle;
  }
  .mark.up {
    text-anchor: end;
    dominant-baseline: central;
  }
  .name {
    dominant-baseline: central;
    font-size: 14px;
  }
  .letter,
  var {
    font-style: italic;
  }
  .of {
    font-size: 11px;
  }
  .grid {
    stroke: var(--line);
    stroke-width: 0.5;
  }
  .axis {
    stroke: var(--ink);
    stroke-width: 1.5;
  }
  .curve {
    stroke: var(--ink);
    stroke-width: 2;
    stroke-linejoin: round;
  }
  .curve[data-dash='1'] {
    stroke-dasharray: 8 4;
  }
  .curve[data-dash='2'] {
    stroke-dasharray: 2 4;
  }
  .curve[data-dash='3'] {
    stroke-dasharray: 10 4 2 4;
  }
  .now,
  .read {
    stroke: var(--ink);
    stroke-width: 1;
    stroke-dasharray: 3 3;
  }
  .read {
    stroke: var(--focus);
    stroke-dasharray: none;
  }
  .dot {
    fill: var(--ink);
    stroke: var(--paper);
    stroke-width: 1.5;
  }
  .held {
    fill: var(--paper);
    stroke: var(--ink);
    stroke-width: 1.5;
  }
  [part='caption'] {
    min-block-size: 1.5em;
    margin-block-start: 0.35em;
    direction: ltr;
    text-align: left;
  }
  [part='caption'] span {
    white-space: nowrap;
  }
  @media print {
    :host {
      break-inside: avoid;
    }
    [part='plane'] {
      grid-template-columns: minmax(0, 640px);
      overflow: visible;
    }
    svg {
      max-inline-size: 100%;
      block-size: auto;
    }
    .read {
      display: none;
    }
  }
`;
