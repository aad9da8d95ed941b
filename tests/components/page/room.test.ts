import { expect, fixture, html, nextFrame } from '@open-wc/testing';
import { LitElement, html as markup, type TemplateResult } from 'lit';
import { Room } from '../../../src/components/page/index.ts';
import { settled } from '../beside-board.ts';

class Roomy extends LitElement {
  readonly room = new Room(this);
  /** The widths that were rendered, in order. */
  readonly seen: number[] = [];

  override render(): TemplateResult {
    this.seen.push(this.room.width);
    return markup`<p>${this.room.width}</p>`;
  }
}
customElements.define('test-roomy', Roomy);

async function roomy(width: string): Promise<{ page: HTMLElement; element: Roomy }> {
  const page = await fixture<HTMLElement>(html`<div></div>`);
  page.style.width = width;
  const element = new Roomy();
  element.style.display = 'block';
  page.append(element);
  await settled();
  return { page, element };
}

describe('the room of an element', () => {
  it('is known in the first frame', async () => {
    const page = await fixture<HTMLElement>(html`<div></div>`);
    page.style.width = '300px';
    const element = new Roomy();
    element.style.display = 'block';
    page.append(element);
    await nextFrame();
    await nextFrame();
    expect(element.room.width).to.equal(300);
  });

  it('follows the page, and asks for nothing while it stays', async () => {
    const { page, element } = await roomy('300px');
    page.style.width = '420px';
    await settled();
    expect(element.room.width).to.equal(420);
    page.style.paddingTop = '50px';
    element.style.minHeight = '90px';
    await settled();
    expect(element.seen).to.deep.equal([0, 300, 420]);
  });

  it('is 0 while it is not shown', async () => {
    const { page, element } = await roomy('300px');
    page.style.display = 'none';
    await settled();
    expect(element.room.width).to.equal(0);
    page.style.display = '';
    await settled();
    expect(element.room.width).to.equal(300);
  });

  it('is not asked for once it has left the page, and again when it is back', async () => {
    const { page, element } = await roomy('300px');
    element.remove();
    page.style.width = '350px';
    await settled();
    expect(element.room.width).to.equal(300);
    page.append(element);
    await settled();
    expect(element.room.width).to.equal(350);
  });
});
