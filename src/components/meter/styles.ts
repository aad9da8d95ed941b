import { css, type CSSResult } from 'lit';

/** A symbol and digits in ink, in a hairline frame; it is as wide as its widest reading, whatever is written. */
export const sheet: CSSResult = css`
  :host {
    display: inline-block;
    max-inline-size: 100%;
    vertical-align: top;
    font-family: var(--font);
    color: var(--ink);
  }
  [part='meter'] {
    padding: 0.5em 0.75em;
    border: 1px solid var(--line);
    border-radius: 2px;
    background: var(--paper);
  }
  [part='meter']:has(:focus-visible) {
    outline: 2px solid var(--focus);
    outline-offset: 2px;
  }
  [role] {
    display: flex;
    align-items: center;
    gap: 0.6em;
    outline: none;
  }
  [part='symbol'] {
    flex: none;
    inline-size: 1.75em;
    border: 1.5px solid;
    border-radius: 50%;
    line-height: 1.75em;
    text-align: center;
  }
  [part='reading'] {
    min-inline-size: 0;
    font-size: 1.375em;
    line-height: 1.3;
    text-align: end;
  }
  [part='reading']::before {
    content: attr(data-room);
    display: block;
    block-size: 0;
    overflow: hidden;
    visibility: hidden;
    white-space: nowrap;
  }
  [part='reading'] > span,
  [part='change'],
  [part='caption'],
  [part='meter'] + p {
    display: block;
    inline-size: 0;
    min-inline-size: 100%;
  }
  .number {
    white-space: nowrap;
  }
  .words {
    font-size: 0.64em;
    line-height: 2.03;
  }
  [part='meter']:has(svg) {
    padding-block-start: 0;
    border: none;
  }
  svg {
    inline-size: 14em;
    max-inline-size: 100%;
    direction: ltr;
    fill: none;
    stroke: var(--ink);
    stroke-linecap: round;
  }
  svg text {
    font-size: 13px;
    text-anchor: middle;
    dominant-baseline: central;
    fill: var(--ink);
    stroke: none;
  }
  .arc {
    stroke-width: 0.75;
    stroke-linecap: butt;
  }
  .held {
    stroke-dasharray: 2 4;
  }
  .needle,
  .major {
    stroke-width: 1.25;
  }
  .stops {
    stroke-width: 4;
  }
  circle {
    fill: var(--ink);
  }
  @media screen and (prefers-reduced-motion: no-preference) {
    .needle {
      transition: transform 120ms ease-out;
    }
  }
  p {
    margin: 0;
  }
  [part='change'] {
    min-block-size: 2.7em;
    font-size: 0.8125em;
    line-height: 1.35;
  }
  [part='leads'] {
    display: flex;
    flex-wrap: wrap;
    gap: 0.25em 1em;
    margin-block-start: 0.5em;
  }
  select {
    min-block-size: 1.75em;
    min-inline-size: 3em;
    font: inherit;
  }
  @media (pointer: coarse) {
    select {
      min-block-size: 44px;
      min-inline-size: 44px;
    }
  }
  [part='caption'] {
    margin-block-start: 0.25em;
    font-size: 0.8125em;
    line-height: 1.35;
    color: var(--soft);
  }
`;
