import { css, type CSSResult } from 'lit';

/** A flat profile in ink and hairlines; the level lines alone have the hue of potential. */
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
  [part='axis'] {
    font-size: 0.8125em;
    color: var(--soft);
  }
  [part='levels'] {
    overflow-x: auto;
    direction: ltr;
  }
  svg {
    display: block;
    fill: none;
    stroke-linecap: round;
  }
  svg text {
    font-size: 13px;
    text-anchor: middle;
    fill: var(--ink);
    stroke: var(--paper);
    stroke-width: 3;
    paint-order: stroke;
  }
  svg .label {
    font-weight: 600;
  }
  svg .mark {
    text-anchor: end;
    dominant-baseline: central;
    fill: var(--soft);
  }
  .grid,
  .axis,
  .guide {
    stroke: var(--line);
    stroke-width: 0.5;
    pointer-events: none;
  }
  .axis {
    stroke-width: 1;
  }
  .guide {
    stroke-dasharray: 1 4;
  }
  .lines,
  .held {
    stroke: var(--potential);
    stroke-width: 3;
    pointer-events: none;
  }
  .held {
    stroke-width: 1.25;
    stroke-dasharray: 6 4;
  }
  .step,
  .arrow {
    stroke: var(--ink);
    stroke-width: 2;
  }
  .still .step {
    stroke-width: 1;
    stroke-dasharray: 3 4;
  }
  .step.flat {
    stroke-width: 7;
    stroke-dasharray: none;
  }
  .hit {
    pointer-events: all;
  }
  .component {
    outline: none;
  }
  :is(.lit, .component:hover) .hit {
    stroke: var(--ink);
    stroke-width: 1;
    stroke-dasharray: 5 3;
  }
  :is(.lit, .component:hover) .label {
    text-decoration: underline;
  }
  :is(.lit, .component:hover) .step {
    stroke-width: 4;
  }
  .component:focus-visible .hit {
    stroke: var(--focus);
    stroke-width: 2;
    stroke-dasharray: none;
  }
  summary {
    inline-size: fit-content;
    padding-block: 0.35em;
    cursor: pointer;
  }
  @media (max-width: 30em) {
    th,
    td {
      padding-inline: 0.2em;
      font-size: 0.875em;
    }
    thead th {
      white-space: normal;
    }
  }
  @media print {
    [part='levels'] {
      overflow: visible;
    }
    svg {
      max-inline-size: 100%;
      block-size: auto;
    }
    :is(.lit, .component:hover) .hit {
      stroke: none;
    }
  }
`;
