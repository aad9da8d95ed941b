import '../../../src/components/claim/define.ts';
import type { RheoletClaim } from '../../../src/components/claim/index.ts';
import { besideBoard, settled, type BesideBoard } from '../beside-board.ts';

export type ClaimBench = BesideBoard<RheoletClaim>;

/** 6 V on two branches: a control at 12 Ω and a lamp of 12 Ω, 0.5 A through each; a switch before them. */
export const quay = 'B1 6 V + A3 + S1 closed + ((A1 + R1 [2..40] 12 Ω) ∥ (A2 + R2 12 Ω))';

/** A claim with its attributes, beside a board with a circuit. */
export function bench(
  circuit: string,
  attributes: Readonly<Record<string, string>> = {},
): Promise<ClaimBench> {
  return besideBoard<RheoletClaim>('rheolet-claim', circuit, attributes);
}

/** A button by its words: those that are heard, where it has some. */
export function button(made: ClaimBench, name: string): HTMLButtonElement {
  const buttons = made.all('button') as HTMLButtonElement[];
  return buttons.find((each) => (each.querySelector('.heard') ?? each).textContent.trim() === name)!;
}

/** Presses a button. */
export async function press(made: ClaimBench, name: string): Promise<void> {
  button(made, name).click();
  await settled();
}

/** The box with the statement. */
export const box = (made: ClaimBench): HTMLInputElement => made.all('input')[0] as HTMLInputElement;

/** Tests a statement, and gives what is said of it. */
export async function tested(made: ClaimBench, statement: string): Promise<string> {
  made.element.value = statement;
  await made.element.updateComplete;
  await press(made, 'Test');
  return made.part('verdict') || made.part('problem');
}
