import { expect, fixture, html } from '@open-wc/testing';
import { shortcutOf } from '../../../src/components/link/shortcut.ts';

/** What a key with its modifiers asks for where it is pressed. */
function asked(at: Element, key: string, modifiers: KeyboardEventInit = { ctrlKey: true }): string {
  let found = 'nothing heard';
  const listen = (event: Event): void => {
    if (event instanceof KeyboardEvent) found = shortcutOf(event) ?? 'nothing';
  };
  document.addEventListener('keydown', listen, { once: true });
  at.dispatchEvent(
    new KeyboardEvent('keydown', { key, bubbles: true, composed: true, cancelable: true, ...modifiers }),
  );
  return found;
}

describe('the keys that undo and redo', () => {
  for (const [key, modifiers, does] of [
    ['z', { ctrlKey: true }, 'undo'],
    ['z', { metaKey: true }, 'undo'],
    ['y', { ctrlKey: true }, 'redo'],
    ['y', { metaKey: true }, 'redo'],
    ['Z', { ctrlKey: true, shiftKey: true }, 'redo'],
    ['Z', { metaKey: true, shiftKey: true }, 'redo'],
    ['Z', { ctrlKey: true }, 'undo'],
    ['Y', { ctrlKey: true }, 'redo'],
    ['z', {}, 'nothing'],
    ['y', { shiftKey: true }, 'nothing'],
    ['z', { altKey: true }, 'nothing'],
    ['x', { ctrlKey: true }, 'nothing'],
    ['Enter', { ctrlKey: true }, 'nothing'],
  ] as const)
    it(`${[...Object.keys(modifiers), key].join(' ')}: ${does}`, () => {
      expect(asked(document.body, key, modifiers)).to.equal(does);
    });

  it('take back letters, and nothing on a board, where the pupil writes', async () => {
    const page = await fixture(
      html`<div>
        <input id="text" /><input id="number" type="number" /><textarea></textarea>
        <p contenteditable="true">notes</p>
      </div>`,
    );
    for (const each of page.children) expect(asked(each, 'z'), each.localName).to.equal('nothing');
  });

  it('are a board’s in a control in which nothing is written', async () => {
    const page = await fixture(
      html`<div>
        <input type="range" /><input type="checkbox" /><input readonly /><input disabled /><button>
          Reset
        </button>
        <select>
          <option>X</option>
        </select>
      </div>`,
    );
    for (const each of page.children) expect(asked(each, 'z'), each.localName).to.equal('undo');
  });

  it('go by the box that has the focus inside an element, not by the element', async () => {
    const host = await fixture(html`<div></div>`);
    const root = host.attachShadow({ mode: 'open' });
    const box = root.appendChild(document.createElement('input'));
    const button = root.appendChild(document.createElement('button'));
    expect([asked(box, 'z'), asked(button, 'z')]).to.deep.equal(['nothing', 'undo']);
  });

  it('are left to whoever has used them already', async () => {
    const page = await fixture(
      html`<div @keydown=${(event: Event) => event.preventDefault()}><button></button></div>`,
    );
    expect(asked(page.firstElementChild ?? page, 'z')).to.equal('nothing');
  });
});
