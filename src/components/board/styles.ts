import { css, type CSSResult } from 'lit';

/** How a board looks: ink on paper. */
export const styles: CSSResult = css`
  /* A board and its parts are painted each by itself, so that the browser passes over those in which nothing moves. */
  :host,
  :host > div {
    isolation: isolate;
  }
  :host {
    display: block;
    box-sizing: border-box;
    max-inline-size: 100%;
    padding: 12px;
    background: var(--paper);
    color: var(--ink);
    font-family: var(--font);
    line-height: 1.4;
  }
  .stage {
    position: relative;
    contain: content;
    overflow-clip-margin: 8px;
    inline-size: fit-content;
    max-inline-size: 100%;
    margin-inline: auto;
    direction: ltr;
  }
  .stage svg {
    display: block;
    max-inline-size: 100%;
    block-size: auto;
  }
  .stage .moving,
  .stage .digits {
    block-size: 100%;
  }
  .moving,
  .digits {
    position: absolute;
    inset: 0;
    contain: strict;
    overflow-clip-margin: 8px;
    inline-size: 100%;
    pointer-events: none;
  }
  .reserve {
    display: block;
    max-inline-size: 100%;
    block-size: auto;
  }
  .still {
    position: relative;
    isolation: isolate;
  }
  svg {
    fill: none;
    stroke: none;
  }
  .ribbons {
    fill: var(--current);
  }
  .held {
    stroke: var(--ink);
    stroke-dasharray: 3 3;
    vector-effect: non-scaling-stroke;
  }
  .light {
    stop-color: var(--rheolet-light, light-dark(#ffcf4a, #e0a93a));
  }
  .wire,
  .symbol,
  .terminal {
    stroke: var(--ink);
    stroke-width: 1.75;
    stroke-linejoin: round;
  }
  .dots,
  .filled,
  text {
    fill: var(--ink);
  }
  text {
    font-family: var(--font);
    font-size: 14px;
  }
  .label {
    font-weight: 600;
  }
  .quantity {
    font-style: italic;
  }
  .quantity tspan {
    font-style: normal;
  }
  .span {
    stroke: var(--ink);
  }
  .hit {
    pointer-events: all;
  }
  :focus-visible {
    outline: 2px solid var(--focus);
    outline-offset: 1px;
  }
  .component:focus-visible {
    outline: none;
  }
  .component:focus-visible .ring {
    stroke: var(--focus);
    stroke-width: 2;
  }
  [data-condition='broken'] :is(.symbol, .filled, .letter) {
    opacity: 0.4;
  }
  .lit .ring {
    stroke: var(--ink);
    stroke-width: 1.5;
    stroke-dasharray: 5 3;
  }
  .lit .symbol {
    stroke-width: 3.5;
  }
  .strip {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    gap: 0 1em;
    min-block-size: 1.5em;
    margin-block: 0.5rem;
    padding-block: 0.25rem;
    border-block: 1px solid var(--line);
  }
  [part='caption'] {
    display: flex;
    contain: content;
    flex: 1 1 14em;
    flex-wrap: wrap;
    gap: 0 1em;
  }
  .alter {
    display: flex;
    align-items: center;
    gap: 0.5rem;
  }
  @media (max-width: 30rem) {
    [part='caption'] {
      min-block-size: 2.8em;
    }
  }
  .hint,
  [part='key'] {
    color: var(--soft);
  }
  [part='key'] {
    display: inline-flex;
    align-items: center;
    gap: 0.4em;
    min-inline-size: 10em; /* its text decides nothing about the lines of the strip */
    white-space: nowrap;
  }
  [part='controls'],
  .foot,
  .acts {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.5rem 1.25rem;
  }
  .foot {
    margin-block-start: 0.5rem;
  }
  .acts {
    gap: 0.5rem;
    justify-content: end;
    margin-inline-start: auto;
  }
  #copy:not([hidden]) {
    margin-block-start: 0.5rem;
  }
  [hidden] {
    display: none;
  }
  label,
  label input {
    box-sizing: border-box;
    inline-size: 100%;
    font: inherit;
  }
  button[aria-pressed='true'] {
    border-color: var(--ink);
    box-shadow: inset 0 0 0 1px var(--ink);
  }
  [part='notes']:empty {
    display: none;
  }
  div[part='notes'] {
    flex: 1 1 100%;
  }
  [part='notes'] p,
  [part='problem'] {
    margin: 0;
    color: var(--alert);
  }
  .scroll {
    overflow-x: auto;
    max-block-size: 24em;
    margin-block-end: 0.5em;
  }
  table {
    border-collapse: collapse;
  }
  th,
  td {
    padding: 0.2em 0.8em;
    border-block-end: 1px solid var(--line);
    text-align: end;
  }
  caption {
    padding-block: 0.25em;
    text-align: start;
    font-weight: 600;
  }
  td small {
    display: block;
    min-inline-size: 4.5em; /* “the same” is one line */
    color: var(--soft);
  }
  th[scope='row'] {
    text-align: start;
  }
  @media (forced-colors: active) {
    .light {
      stop-color: color-mix(in srgb, GrayText 40%, Canvas);
    }
    button[aria-pressed='true'] {
      background: Highlight;
      color: HighlightText;
      forced-color-adjust: none;
    }
  }
  @media print {
    :host {
      break-inside: avoid;
      padding-inline: 0;
    }
    .acts,
    .alter,
    .hint {
      display: none;
    }
    .light {
      stop-color: transparent;
    }
  }
`;
