import '../../../src/components/rules/define.ts';
import type { RheoletRules } from '../../../src/components/rules/index.ts';
import { besideBoard, type BesideBoard } from '../beside-board.ts';

export type RulesBench = BesideBoard<RheoletRules>;

/** 9 V drive 1.5 A through a control of 6 Ω and 3 A through a lamp of 3 Ω beside it: 4.5 A in all, as through 2 Ω. */
export const quay = 'B1 9 V + A1 + (R1 [2..40] 6 Ω ∥ (A2 + L1 3 Ω))';
/** 9 V on 4 Ω and 5 Ω in one path: 1 A, 4 V and 5 V. */
export const pump = 'B1 9 V + R1 [1..20] 4 Ω + R2 5 Ω';

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
