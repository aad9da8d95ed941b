import '../../../src/components/steps/define.ts';
import type { RheoletSteps } from '../../../src/components/steps/index.ts';
import { besideBoard, settled, type BesideBoard } from '../beside-board.ts';
import { eventually } from '../eventually.ts';

export type StepsBench = BesideBoard<RheoletSteps>;

/** 12 V over 4 Ω and, after it, 6 Ω beside 8 Ω + 4 Ω: 8 Ω in all, 1.5 A, of which 0.5 A go through R3. */
export const quay = 'B1 12 V + A1 + R1 [2..40] 4 Ω + (R2 6 Ω ∥ (R3 8 Ω + R4 4 Ω))';

/** A worked solution with its attributes, beside a board with a circuit. */
export const bench = (
  attributes: Readonly<Record<string, string>> = { of: 'I_R3' },
  circuit: string = quay,
): Promise<StepsBench> => besideBoard<RheoletSteps>('rheolet-steps', circuit, attributes);

/** A button by its words. */
export const button = (made: StepsBench, name: string): HTMLButtonElement =>
  (made.all('button') as HTMLButtonElement[]).find(({ textContent }) => textContent.trim() === name)!;

/** Presses a button, so many times. */
export async function press(made: StepsBench, name: string, times = 1): Promise<void> {
  for (let time = 0; time < times; time += 1) {
    button(made, name).click();
    await made.element.updateComplete;
  }
  await settled();
}

/** The steps that can be seen. */
export const seen = (made: StepsBench): HTMLElement[] =>
  made.all('[part=step]').filter((each) => each.checkVisibility());

/** What is read out of each equation that can be seen. */
export const heard = (made: StepsBench): string[] =>
  made
    .all('[part=step] .heard')
    .flatMap((each) => (each.parentElement!.checkVisibility() ? [each.textContent.trim()] : []));

/** The box for the number that is to be filled in now. */
export const box = (made: StepsBench): HTMLInputElement =>
  made.all('input').find((each) => each.checkVisibility()) as HTMLInputElement;

/** Fills in a number. */
export async function fill(made: StepsBench, text: string): Promise<void> {
  await eventually(() => box(made), 'there is a box to fill in');
  const input = box(made);
  input.value = text;
  input.dispatchEvent(new Event('change'));
  await made.element.updateComplete;
}
