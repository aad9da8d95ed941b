import { say, usualCourse, type Course, type Language } from '../words/index.ts';
import { figuresOf } from './figures.ts';
import type { Equation, RuleCheck } from './rule-check.ts';

/** How a class writes, and in which language; three figures and the usual course unless said. */
export interface LineStyle extends Partial<Omit<Course, 'figures'>> {
  readonly figures?: number;
  readonly language?: Language;
}

/** A piece of an equation, to be set for the eye. */
export type Token =
  | { readonly kind: 'operator'; readonly sign: '=' | '+' | '−' | '×' | '<' }
  /** A quantity; with `over`, 1 over it. */
  | { readonly kind: 'symbol'; readonly letter: string; readonly subscript: string; readonly over: boolean }
  | {
      readonly kind: 'number';
      readonly number: string;
      readonly unit: string;
      readonly text: string;
      readonly over: boolean;
    }
  /** A number that is kept back, written "?". */
  | { readonly kind: 'unknown'; readonly over: boolean };

/** What is shown of a check. */
export interface RuleLine {
  /** The rule in words. */
  readonly rule: string;
  /** Why it applies, or why it does not. */
  readonly why: string;
  /** The equation in symbols; empty where the rule does not apply. */
  readonly symbols: readonly Token[];
  /** The equation in numbers; empty too where they would tell a value that is kept back. */
  readonly numbers: readonly Token[];
  /** Whether the numbers as written miss by a last figure. */
  readonly rounded: boolean;
  /** What is read out: the numbers, else the symbols, else why it does not apply. */
  readonly spoken: string;
}

type Sign = Extract<Token, { kind: 'operator' }>['sign'];

/** An equation's terms with the operators between them; what is taken away has a minus. */
function laidOut(
  { form, relation, sides }: Equation,
  tokens: readonly (readonly Token[])[],
): readonly Token[] {
  return tokens.flatMap((side, index) =>
    side.flatMap((token, place): readonly Token[] => {
      const sign: Sign = form === 'product' ? '×' : Number(sides[index]?.[place]?.value) < 0 ? '−' : '+';
      const isFirst = place === 0 && sign !== '−';
      const between: readonly Token[] = isFirst ? [] : [{ kind: 'operator', sign }];
      const related: readonly Token[] =
        index > 0 && place === 0 ? [{ kind: 'operator', sign: relation === 'less' ? '<' : '=' }] : [];
      return [...related, ...between, token];
    }),
  );
}

/** The subscript of a name, the wires across bridged components called what they are. */
function labelled(subscript: string, language: Language | undefined): string {
  return subscript.replace(/([^(+∥…]+) bridge/g, (_, id: string) =>
    say({ code: 'wire across', data: { id } }, language),
  );
}

/** A token as it is read out. */
function spokenToken(token: Token, language: Language | undefined): string {
  if (token.kind === 'operator') return say({ code: 'operator', data: token }, language);
  const of =
    token.kind === 'unknown'
      ? say({ code: 'unknown', data: {} }, language)
      : token.kind === 'number'
        ? token.text
        : say({ code: 'symbol', data: { letter: token.letter, of: token.subscript } }, language);
  return token.over ? say({ code: 'reciprocal', data: { of } }, language) : of;
}

/** How a check is shown and read out. */
export function ruleLine(check: RuleCheck, style: LineStyle = {}): RuleLine {
  const { figures = 3, language } = style;
  const { wording, letter, decimalSign } = { ...usualCourse, ...style };
  const rule = say({ code: check.rule, data: { pd: wording } }, language);
  const why = say(check.why, language);
  const equation = check.substituted;
  if (!equation) return { rule, why, symbols: [], numbers: [], rounded: false, spoken: why };

  const over = equation.form === 'reciprocals';
  const { sides, closes } = figuresOf(equation, figures, decimalSign);
  const terms = equation.sides.flat();
  const hidden = terms.filter((term) => term.hidden).length;
  const tells = hidden === terms.length || (hidden === 1 && equation.relation === 'equal');
  const symbols = laidOut(
    equation,
    equation.sides.map((side) =>
      side.map(({ name }) => ({
        kind: 'symbol',
        letter: name.startsWith('V') ? letter : name.charAt(0),
        subscript: labelled(name.slice(2).replace(/^\((.*)\)$/, '$1'), language),
        over,
      })),
    ),
  );
  const numbers = laidOut(
    equation,
    sides.map((side) =>
      side.map(({ term, ...figure }) =>
        term.hidden ? { kind: 'unknown', over } : { kind: 'number', ...figure, over },
      ),
    ),
  );
  const shown = tells ? symbols : numbers;
  const spoken = shown.map((token) => spokenToken(token, language)).join(' ');
  return { rule, why, symbols, numbers: tells ? [] : numbers, rounded: !closes && hidden === 0, spoken };
}
