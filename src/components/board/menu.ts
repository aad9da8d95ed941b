import { html, nothing, type TemplateResult } from 'lit';
import { say, type Circuit } from '../../engine/core.ts';
import type { Saved, Sharing } from './sharing.ts';

const word = (does: 'copy' | 'link' | 'text' | Saved): string => say({ code: 'button', data: { does } });

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

/** What can be taken along of a board: a link, where the page has an address, the circuit, unless it would tell a hidden value, and pictures of what is drawn. */
export function menu({ components }: Circuit, drawn: boolean, sharing: Sharing): TemplateResult {
  const { isOpen, result } = sharing;
  const button = (does: 'link' | 'text'): TemplateResult =>
    html`<button type="button" part="act" @click=${() => sharing.copy(does)}>${word(does)}</button>`;
  const picture = (does: Saved): TemplateResult =>
    html`<button type="button" part="act" @click=${() => sharing.save(does)}>${word(does)}</button>`;
  const escape = ({ key }: KeyboardEvent): void => {
    if (key === 'Escape') sharing.open(false);
  };
  return html`<div id="copy" class="acts" lang="en" ?hidden=${!isOpen} @keydown=${escape}>
    ${/^(http|file)/.test(location.protocol) ? button('link') : nothing}
    ${components.some(({ hidden }) => hidden) ? nothing : button('text')}
    ${drawn ? [picture('png'), picture('print'), picture('svg')] : nothing}
    ${
      result &&
      html`<label dir="ltr"
        >${result.said} ${result.text ? html`<input readonly .value=${result.text} />` : nothing}</label
      >`
    }
  </div>`;
}
