import { nextFrame } from '@open-wc/testing';
import { settled } from '../beside-board.ts';

const all = <E extends Element>(element: Element, selector: string): E[] => [
  ...element.shadowRoot!.querySelectorAll<E>(selector),
];

/** The sliders of a control, its boxes and its step buttons, in their order. */
export const sliders = (element: Element): HTMLInputElement[] => all(element, 'input[part=slider]');
export const boxes = (element: Element): HTMLInputElement[] => all(element, 'input[part=value]');
export const steps = (element: Element): HTMLButtonElement[] => all(element, '[part=step]');
/** What the sliders are called. */
export const names = (element: Element): (string | null)[] =>
  sliders(element).map((slider) => slider.getAttribute('aria-label'));
/** What the boxes show, blanks plain. */
export const shown = (element: Element): string[] =>
  boxes(element).map(({ value }) => value.replace(/\s/g, ' '));
/** What is said of what was typed into each box. */
export const mistakes = (element: Element): string[] =>
  boxes(element).map((box) => {
    const said = element.shadowRoot!.getElementById(box.getAttribute('aria-describedby')!)!;
    return said.textContent.replace(/\s/g, ' ');
  });

/** Types into a box and leaves it, as the browser tells it. */
export async function type(box: HTMLInputElement, typed: string): Promise<void> {
  box.value = typed;
  box.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
  box.dispatchEvent(new Event('change', { bubbles: true }));
  await nextFrame();
  await settled();
}
