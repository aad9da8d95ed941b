import '../../../src/components/levels/define.ts';
import type { RheoletLevels } from '../../../src/components/levels/index.ts';
import { besideBoard, type BesideBoard } from '../beside-board.ts';

export type LevelsBench = BesideBoard<RheoletLevels>;

/** 9 V over 3 Ω and then 6 Ω beside 12 Ω, which is 4 Ω: 9/7 A, 27/7 V and 36/7 V. */
export const quay = 'B1 9 V + A1 + R1 [1..20] 3 Ω + (R2 6 Ω ∥ L1 12 Ω); V1 across R2';
/** 12 V on 4 Ω and 8 Ω in one path: 4 V and 8 V. */
export const pump = 'B1 12 V + R1 [1..20] 4 Ω + R2 8 Ω';

/** A level diagram with its attributes, beside a board with a circuit. */
export function bench(
  circuit: string,
  attributes: Readonly<Record<string, string>> = {},
): Promise<LevelsBench> {
  return besideBoard<RheoletLevels>('rheolet-levels', circuit, attributes);
}

/** The group of a component. */
export function group({ element }: LevelsBench, id: string): SVGGElement {
  return element.shadowRoot!.querySelector<SVGGElement>(`[data-id=${id}]`)!;
}

/** The pixels from the upper end to the lower end of a component's upright line. */
export function fall(made: LevelsBench, id: string): number {
  return group(made, id).querySelector<SVGPathElement>('.step')!.getBBox().height;
}

/** The component that stands out in the diagram because the board's does. */
export const lit = (made: LevelsBench): string[] => made.all('.lit').map(({ dataset }) => dataset['id']!);

/** What is heard of the components, in order. */
export const heard = (made: LevelsBench): string[] =>
  made.all('.component').map(({ ariaLabel }) => (ariaLabel ?? '').replace(/\s+/g, ' '));
