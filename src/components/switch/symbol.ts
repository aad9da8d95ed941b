import { html, type TemplateResult } from 'lit';

/** The switch of IEC 60617, as on the board. */
export function symbol(closed: boolean): TemplateResult {
  const terminals =
    'M-22,0L-15,0M15,0L22,0M-15,0a3 3 0 0 1 6,0a3 3 0 0 1 -6,0M9,0a3 3 0 0 1 6,0a3 3 0 0 1 -6,0';
  return html`<svg part="symbol" viewBox="-23 -14 46 18" width="46" height="18" aria-hidden="true">
    <path d=${terminals + (closed ? 'M-9,0L9,0' : 'M-9.5,-1.5L11,-11')} />
  </svg>`;
}
