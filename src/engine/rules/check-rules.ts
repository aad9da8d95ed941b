import { faultIn, hasFault, type Circuit, type Component } from '../circuit/index.ts';
import { solveExact, type Readings } from '../solve/index.ts';
import type { Said } from '../words/index.ts';
import { componentsOf, type Found } from './found.ts';
import { junctionLaw, loopLaw, ohmsLaw, powerBalance } from './laws.ts';
import { parallelCurrent, parallelResistance, parallelVoltage } from './parallel.ts';
import type { Equation, Rule, RuleCheck, Value } from './rule-check.ts';
import { seriesCurrent, seriesResistance, seriesVoltage } from './series.ts';
import { isJoin, Survey } from './survey.ts';

const checkers: Readonly<Record<Rule, (survey: Survey) => readonly Found[]>> = {
  'series current': seriesCurrent,
  'series p.d.': seriesVoltage,
  'series resistance': seriesResistance,
  'parallel p.d.': parallelVoltage,
  'parallel current': parallelCurrent,
  'parallel resistance': parallelResistance,
  'junction law': junctionLaw,
  'loop law': loopLaw,
  'V = IR': ohmsLaw,
  'power balance': powerBalance,
};

/** Whether a rule holds whatever is secretly wrong: not with a resistance, nor with a p.d. that is not read, or taken for 0 by mistake. */
function isSure(rule: Rule, { live, solution }: Survey): boolean {
  if (rule.endsWith('current') || rule === 'junction law') return true;
  const isOdd = (each: Component): boolean =>
    solution.voltage(each.id) === undefined || (faultIn(each) === 'broken' && isJoin(each));
  return !rule.endsWith('resistance') && rule !== 'V = IR' && !live.some(isOdd);
}

/** Why a rule applies nowhere, if what hinders it is no matter of places. */
function obstacleOf(rule: Rule, circuit: Circuit, survey: Survey): Said | undefined {
  const { solution, live, supplies } = survey;
  if (solution.status === 'faulty') return { code: 'circuit has a fault', data: {} };
  if (live.length === 0) {
    if (circuit.terminals) return { code: 'terminals apart', data: {} };
    const [remark] = solution.remarks.filter(({ code }) => code === 'open loop');
    return remark ?? { code: 'not driven', data: {} };
  }
  if (hasFault(circuit) && !isSure(rule, survey)) return { code: 'not as marked', data: {} };
  return supplies.length > 0 || rule.endsWith('resistance') ? undefined : { code: 'not driven', data: {} };
}

/** The quantities of an equation, on whatever side, and how they are related: where these are the same, so is what is said. */
const key = ({ form, relation, sides }: Equation): string =>
  [form, relation, ...sides.flatMap((side) => side.map(({ name }) => name)).sort()].join();

/** Every place of a rule, none said twice; and why it has none, or not everywhere. */
function places(rule: Rule, survey: Survey): readonly Found[] {
  const all = checkers[rule](survey);
  const different = [
    ...new Map(all.toReversed().map((one) => [one.equation ? key(one.equation) : one, one])).values(),
  ];
  const out = survey.broken.map(({ id }) => id);
  const ids = /^(series|parallel)/.test(rule) ? survey.bridge : [];
  if (ids.length > 0) different.unshift({ about: componentsOf(ids), why: { code: 'bridge', data: { ids } } });
  if (different.length === 0) {
    const why: Said = /^(pa|j)/.test(rule)
      ? { code: 'only one path', data: { ids: out, open: out.length > 0 ? [] : survey.secondPaths } }
      : { code: 'nothing to add', data: { ids: out } };
    return [{ about: [], why }];
  }
  return different.reverse().sort((a, b) => Number(!a.equation) - Number(!b.equation));
}

/**
 * The rules of circuits: each where it applies, with its numbers, then where it does not and why; every rule at least once,
 * none twice with the same quantities. Solves the circuit exactly unless a solution is given.
 */
export function checkRules(
  circuit: Circuit,
  solution: Readings<Value> = solveExact(circuit),
): readonly RuleCheck[] {
  const survey = new Survey(circuit, solution);
  return (Object.keys(checkers) as readonly Rule[]).flatMap((rule) => {
    const obstacle = obstacleOf(rule, circuit, survey);
    return (obstacle ? [{ about: [], why: obstacle }] : places(rule, survey)).map(
      ({ about, why, equation }): RuleCheck => {
        if (!equation) return { rule, about, status: 'does not apply', within: 0, why };
        return { rule, about, substituted: equation, status: 'holds', within: survey.spread(equation), why };
      },
    );
  });
}
