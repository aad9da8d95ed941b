import { junctions, loops } from '../topology/index.ts';
import { product } from './arithmetic.ts';
import { balance, holds, spread, spreadOf } from './check.ts';
import type { Equation, RuleCheck } from './rule-check.ts';
import { telling } from './block.ts';
import type { Survey } from './survey.ts';
import { flipped, isBare, magnitudes } from './terms.ts';

/** The junction law, Kirchhoff's first: as much current flows in as out. Where two junctions say the same, the plainer one. */
export function junctionLaw(survey: Survey): readonly RuleCheck[] {
  const largest = survey.largest('I');
  const told = new Map<string, string>();
  for (const { parts } of survey.chains) {
    const [best] = telling(parts)?.ends ?? [];
    for (const { component } of parts) if (component && best) told.set(component.id, best);
  }
  const checks = junctions({ components: survey.live }).map(({ ends }) => {
    const ids = ends.map(({ id }) => id);
    const away = ends.flatMap(({ id, end }) => {
      const component = survey.components.get(id);
      return component ? survey.terms.current(component, end === 'to') : [];
    });
    const equation = balance([], away);
    const check = holds(
      'junction law',
      ids,
      equation,
      { code: 'one junction', data: { ids } },
      spreadOf(equation, largest),
    );
    const best = ids.map((id) => told.get(id) ?? id);
    return { check, key: best.toSorted().join(), borrowed: best.filter((id) => !ids.includes(id)).length };
  });
  const plainest = checks.toSorted((a, b) => b.borrowed - a.borrowed);
  const different = new Map(plainest.map(({ key, check }) => [key, check]));
  return checks.flatMap(({ check }) => ([...different.values()].includes(check) ? check : []));
}

/** The loop law, Kirchhoff's second: round a loop, what the supplies lift the others drop. */
export function loopLaw(survey: Survey): readonly RuleCheck[] {
  const largest = survey.largest('V');
  return loops({ components: survey.live }).flatMap((loop) => {
    const ids = loop.map(({ id }) => id);
    const steps = loop.flatMap(({ id, reversed }) => {
      const component = survey.components.get(id);
      return component
        ? [{ isSupply: component.kind === 'supply', terms: survey.terms.voltage(component, reversed) }]
        : [];
    });
    const of = (supplies: boolean) =>
      steps.flatMap(({ isSupply, terms }) => (isSupply === supplies ? terms : []));
    const equation = balance(flipped(of(true)), of(false));
    if (equation.sides.some((side) => side.length === 0)) return [];
    return holds(
      'loop law',
      ids,
      equation,
      { code: 'closed loop', data: { ids } },
      spreadOf(equation, largest),
    );
  });
}

/** V = IR for whatever has a resistance: its p.d. is its current times its resistance. */
export function ohmsLaw(survey: Survey): readonly RuleCheck[] {
  const { live, terms } = survey;
  const largest = survey.largest('V');
  return live.flatMap((component) => {
    const { id, kind } = component;
    if (kind === 'supply' || isBare(component)) return [];
    const voltage = magnitudes(terms.voltage(component, false));
    const factors = [...magnitudes(terms.current(component, false)), terms.resistance(component)];
    const equation: Equation = { form: 'product', relation: 'equal', sides: [voltage, factors] };
    const within = spread([product(voltage), product(factors)], largest);
    return holds('V = IR', [id], equation, { code: 'has resistance', data: { id } }, within);
  });
}

/** The balance of power: what the supplies give, the others take. */
export function powerBalance(survey: Survey): readonly RuleCheck[] {
  const { live, terms, supplies } = survey;
  const taken = live.filter((component) => component.kind !== 'supply' && !isBare(component));
  const equation = balance(
    supplies.map((supply) => terms.power(supply)),
    taken.map((component) => terms.power(component)),
  );
  const about = [...supplies, ...taken].map(({ id }) => id);
  if (taken.length === 0) return [];
  return [
    holds(
      'power balance',
      about,
      equation,
      { code: 'energy is kept', data: {} },
      spreadOf(equation, survey.largest('P')),
    ),
  ];
}
