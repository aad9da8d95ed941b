import '../../../src/components/graph/define.ts';
import type { RheoletGraph } from '../../../src/components/graph/index.ts';
import { besideBoard, type BesideBoard } from '../beside-board.ts';

export type GraphBench = BesideBoard<RheoletGraph>;

/** 6 V over a control beside 8 Ω: 0.75 A there at every setting, and 6 V ÷ R1 beside it. */
export const quay = 'B1 6 V + A1 + (R1 [4..40] 12 Ω ∥ (A2 + L1 8 Ω))';
/** 12 V with 2 Ω inside: the power of R1 is greatest, 18 W, at 2 Ω. */
export const pump = 'B1 12 V r 2 Ω + R1 [0..20 step 0.5] 4 Ω';

/** A graph with its attributes, beside a board with a circuit. */
export function bench(
  circuit: string,
  attributes: Readonly<Record<string, string>> = {},
): Promise<GraphBench> {
  return besideBoard<RheoletGraph>('rheolet-graph', circuit, attributes);
}

/** The part that is read along its settings. */
export const plane = ({ element }: GraphBench): HTMLElement =>
  element.shadowRoot!.querySelector<HTMLElement>('[part=plane]')!;

/** What is heard of the point that is read. */
export const heard = (made: GraphBench): string =>
  (plane(made).getAttribute('aria-valuetext') ?? '').replace(/\s/g, ' ');

/** The middles of dots of a kind, in pixels of the picture. */
export const dots = (made: GraphBench, kind: 'dot' | 'held'): (readonly [number, number])[] =>
  made
    .all(`circle.${kind}`)
    .map((dot) => [Number(dot.getAttribute('cx')), Number(dot.getAttribute('cy'))] as const);

/** The corners of a curve, in pixels of the picture. */
export function corners(made: GraphBench, name: string): (readonly [number, number])[] {
  const path =
    made
      .all('.curve')
      .find(({ dataset }) => dataset['of'] === name)
      ?.getAttribute('d') ?? '';
  return [...path.matchAll(/[ML]([-\d.]+) ([-\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
}
