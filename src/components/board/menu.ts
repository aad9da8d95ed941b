import { html, nothing, type TemplateResult } from 'lit';
import { say, type Circuit } from '../../engine/core.ts';
import type { Sharing } from './sharing.ts';

const word = (does: 'copy' | 'link' | 'text'): string => say({ code: 'button', data: { does } });

/** The button that opens and closes the menu. */
export function menuButton(sharing: Sharing): TemplateResult {
  return html`<button
    type="button"
    part="act"
    aria-expanded=${sharing.isOpen}
    aria-controls="copy"
    @click=${() => sharing.open(!sharing.isOpen)}
  >
    ${word('copy')}
  </button>`;
}

/** What can be taken along of a board: a link, where the page has an address, and the circuit, unless it would tell a hidden value. */
export function menu({ components }: Circuit, sharing: Sharing): TemplateResult {
  const { isOpen, result } = sharing;
  const button = (does: 'link' | 'text'): TemplateResult =>
    html`<button type="button" part="act" @click=${() => sharing.copy(does)}>${word(does)}</button>`;
  const escape = ({ key }: KeyboardEvent): void => {
    if (key === 'Escape') sharing.open(false);
  };
  return html`<div id="copy" class="acts" lang="en" ?hidden=${!isOpen} @keydown=${escape}>
    ${/^(http|file)/.test(location.protocol) ? button('link') : nothing}
    ${components.some(({ hidden }) => hidden) ? nothing : button('text')}
    ${
      result &&
      html`<label dir="ltr"
        >${say({ code: 'copied', data: { done: result.done } })}
        ${result.done ? nothing : html`<input readonly .value=${result.text} />`}</label
      >`
    }
  </div>`;
}
