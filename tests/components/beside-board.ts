import { fixture, html, nextFrame } from '@open-wc/testing';
import { sendKeys, sendMouse } from '@web/test-runner-commands';
import { LitElement } from 'lit';
import '../../src/components/board/define.ts';
import type { RheoletBoard } from '../../src/components/board/index.ts';

type Attributes = Readonly<Record<string, string>>;

/** Blanks of every kind made one plain space, which is easier to write in a test. */
const plain = (text: string | null = ''): string => (text ?? '').replace(/\s+/g, ' ').trim();

/** Long enough for digits to follow what moves, 15 times a second, however fast or slow this browser's frames are. */
export async function settled(): Promise<void> {
  const start = performance.now();
  for (let frames = 0; frames < 6 || performance.now() - start < 100; frames += 1) await nextFrame();
  await nextFrame();
}

/** A page with a board and an element that reads it, handled and read as a pupil would. */
export class BesideBoard<E extends HTMLElement> {
  readonly page: HTMLElement;
  readonly board: RheoletBoard;
  readonly element: E;

  constructor(page: HTMLElement, board: RheoletBoard, element: E) {
    this.page = page;
    this.board = board;
    this.element = element;
  }

  all(selector: string): HTMLElement[] {
    return [...this.element.shadowRoot!.querySelectorAll<HTMLElement>(selector)];
  }
  texts(selector: string): string[] {
    return this.all(selector).map(({ textContent }) => plain(textContent));
  }
  /** What a part of it shows; the first, where there are more. */
  part(name: string): string {
    return this.texts(`[part=${name}]`)[0] ?? '';
  }
  /** What a screen reader says of the first element that fits. */
  heard(selector: string): string {
    return plain(this.all(selector)[0]?.ariaLabel ?? '');
  }
  /** All of its text and all values of its attributes. */
  get everything(): string {
    const values = this.all('*').flatMap(({ attributes }) => [...attributes].map(({ value }) => value));
    return plain([this.element.shadowRoot!.textContent, ...values].join('\n'));
  }
  /** The components that stand out on the board. */
  get lit(): string[] {
    const symbols = this.board.shadowRoot!.querySelectorAll<SVGElement>('.component.lit');
    return [...symbols].map(({ dataset }) => dataset['id'] ?? '');
  }

  /** Gives the board another circuit, or other attributes. */
  async show(circuit: string, attributes: Attributes = {}): Promise<void> {
    for (const [name, value] of Object.entries({ ...attributes, circuit }))
      this.board.setAttribute(name, value);
    await this.board.ready;
    await settled();
  }

  /** Comes to it with the Tab key, from a button that stands before it. */
  async tab(): Promise<void> {
    this.page.querySelector('button')!.focus();
    await sendKeys({ press: 'Tab' });
  }
  /** Moves the pointer over the middle of an element. */
  async point(at: Element = this.element): Promise<void> {
    at.scrollIntoView({ block: 'center' });
    const { x, y, width, height } = at.getBoundingClientRect();
    await sendMouse({ type: 'move', position: [Math.round(x + width / 2), Math.round(y + height / 2)] });
    await this.#seen();
  }
  /** Moves it away from everything. */
  async leave(): Promise<void> {
    await sendMouse({ type: 'move', position: [0, 0] });
    await this.#seen();
  }
  /** A page may hear of the pointer a frame after it has moved. */
  async #seen(): Promise<void> {
    for (let frame = 0; frame < 2; frame += 1) await nextFrame();
  }
}

/** A board with a circuit, and an element after it. */
export async function besideBoard<E extends HTMLElement>(
  tag: string,
  circuit: string,
  attributes: Attributes = {},
): Promise<BesideBoard<E>> {
  const page = await fixture<HTMLElement>(
    html`<div><rheolet-board id="quay" circuit=${circuit}></rheolet-board><button>before</button></div>`,
  );
  page.style.padding = '10px';
  const board = page.querySelector<RheoletBoard>('rheolet-board')!;
  const element = document.createElement(tag) as E;
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  page.append(element);
  await board.ready;
  await settled();
  if (element instanceof LitElement) await element.updateComplete;
  return new BesideBoard(page, board, element);
}
