import { fixture, html, nextFrame } from '@open-wc/testing';
import { sendMouse } from '@web/test-runner-commands';
import type { Snapshot } from '../../../src/components/link/index.ts';
import { RheoletMeter } from '../../../src/components/meter/index.ts';
import { register } from '../../../src/components/page/index.ts';
import { StillBoard } from './still-board.ts';

register('rheolet-board', StillBoard);
register('rheolet-meter', RheoletMeter);

/** Thin spaces as plain ones, which are easier to write in a test. */
const plain = (text = ''): string => text.replaceAll('\u202f', ' ').trim();

/** A meter beside its board, handled as a person would. */
export class Bench {
  readonly page: HTMLElement;
  constructor(page: HTMLElement) {
    this.page = page;
  }
  get board(): StillBoard {
    return this.page.querySelector<StillBoard>('rheolet-board')!;
  }
  get meter(): RheoletMeter {
    return this.page.querySelector<RheoletMeter>('rheolet-meter')!;
  }
  part(name: string): string {
    return plain(this.meter.shadowRoot!.querySelector(`[part=${name}]`)?.textContent);
  }
  /** What a screen reader says of it. */
  get name(): string {
    return plain(this.meter.shadowRoot!.querySelector('[role=img]')?.ariaLabel ?? '');
  }
  /** All of its text and all values of its attributes. */
  get everything(): string {
    const elements = [...this.meter.shadowRoot!.querySelectorAll('*')];
    const values = elements.flatMap(({ attributes }) => [...attributes].map(({ value }) => value));
    return plain([this.meter.shadowRoot!.textContent, ...values].join('\n'));
  }
  get width(): number {
    return this.meter.getBoundingClientRect().width;
  }
  async show(line: string, more?: Partial<Snapshot>): Promise<void> {
    this.board.show(line, more);
    await settled();
  }
  async point(): Promise<void> {
    const { x, y, width, height } = this.meter.getBoundingClientRect();
    await sendMouse({ type: 'move', position: [Math.round(x + width / 2), Math.round(y + height / 2)] });
  }
}

/** Long enough for digits to follow what moves. */
export async function settled(): Promise<void> {
  for (let frame = 0; frame < 6; frame += 1) await nextFrame();
}

/** A page with a board that shows a line of notation, and one meter with these attributes. */
export async function bench(line: string, attributes: Readonly<Record<string, string>> = {}): Promise<Bench> {
  const page = await fixture<HTMLElement>(html`<div><rheolet-board id="quay"></rheolet-board></div>`);
  const made = new Bench(page);
  made.board.show(line);
  const meter = document.createElement('rheolet-meter');
  for (const [name, value] of Object.entries(attributes)) meter.setAttribute(name, value);
  page.append(meter);
  await settled();
  return made;
}
