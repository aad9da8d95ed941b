import '../../../src/components/rules/define.ts';
import type { RheoletRules } from '../../../src/components/rules/index.ts';
import { besideBoard, type BesideBoard } from '../beside-board.ts';

export type RulesBench = BesideBoard<RheoletRules>;

/** 6 V drive 0.5 A through a control of 12 Ω and 0.75 A through a lamp of 8 Ω beside it: 1.25 A in all. */
export const quay = 'B1 6 V + A1 + (R1 [4..40] 12 Ω ∥ (A2 + L1 8 Ω))';
/** 12 V on 6 Ω and 18 Ω in one path: 0.5 A, 3 V and 9 V. */
export const pump = 'B1 12 V + R1 [1..20] 6 Ω + R2 18 Ω';

/** A rule checker with its attributes, beside a board with a circuit. */
export function bench(
  circuit: string,
  attributes: Readonly<Record<string, string>> = {},
): Promise<RulesBench> {
  return besideBoard<RheoletRules>('rheolet-rules', circuit, attributes);
}

/** An equation as one would type it: formulae have no blanks in their text. */
const typed = (formulae: string): string =>
  formulae
    .replace(/\s/g, '')
    .replace(/[=+−×<]/g, ' $& ')
    .replace(/(\d)([AVΩW])(?= |$)/g, '$1 $2');

/** The places where rules hold: symbols, numbers, verdict. */
export function held(made: RulesBench): string[][] {
  const [symbols, numbers, verdicts] = ['symbols', 'numbers', 'verdict'].map((part) =>
    made.texts(`[part=${part}]`),
  );
  return symbols!.map((text, place) => [typed(text), typed(numbers![place]!), verdicts![place]!]);
}

/** The line that has the focus. */
export const focused = ({ element }: RulesBench): HTMLElement | null =>
  element.shadowRoot!.activeElement as HTMLElement | null;
