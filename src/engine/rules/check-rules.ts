import type { Circuit } from '../circuit/index.ts';
import { solveExact, type Readings } from '../solve/index.ts';
import type { Said } from '../words/index.ts';
import { fails } from './check.ts';
import { junctionLaw, loopLaw, ohmsLaw, powerBalance } from './laws.ts';
import { parallelCurrent, parallelResistance, parallelVoltage } from './parallel.ts';
import type { Rule, RuleCheck, Value } from './rule-check.ts';
import { seriesCurrent, seriesResistance, seriesVoltage } from './series.ts';
import { Survey } from './survey.ts';

const checkers: Readonly<Record<Rule, (survey: Survey) => readonly RuleCheck[]>> = {
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
const rules = Object.keys(checkers) as readonly Rule[];

/** Why no rule at all applies. */
function obstacle(circuit: Circuit, solution: Readings<Value>, { live }: Survey): Said | undefined {
  if (solution.status === 'faulty') return { code: 'circuit has a fault', data: {} };
  if (live.length > 0) return undefined;
  if (circuit.terminals) return { code: 'no path', data: {} };
  const remark = solution.remarks.find(({ code }) => code === 'open loop');
  return remark ?? { code: 'open loop', data: { switches: [] } };
}

/** Where a rule does not apply, whatever else there is: in a bridge, to a supply, or for want of parts. */
function exceptions(
  rule: Rule,
  { bridge, supplies: [supply] }: Survey,
  isEmpty: boolean,
): readonly RuleCheck[] {
  if (rule === 'V = IR' && supply)
    return [fails(rule, [supply.id], { code: 'not a resistance', data: supply })];
  if (bridge.length > 0 && /^(series|parallel)/.test(rule))
    return [fails(rule, bridge, { code: 'bridge', data: { ids: bridge } })];
  if (!isEmpty) return [];
  return [
    fails(rule, [], {
      code: /^(parallel|junction)/.test(rule) ? 'only one path' : 'nothing to add',
      data: {},
    }),
  ];
}

/** The quantities of an equation, whatever their order: where two have the same, the rule says the same. */
function quantities({ substituted }: RuleCheck): string {
  const sides = substituted?.sides.map((side) =>
    side
      .map(({ name }) => name)
      .sort()
      .join(),
  );
  return [substituted?.form, substituted?.relation, sides?.sort().join('=')].join();
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
  const why = obstacle(circuit, solution, survey);
  if (why) return rules.map((rule) => fails(rule, [], why));
  return rules.flatMap((rule) => {
    const isDriven = survey.supplies.length > 0 || rule.endsWith('resistance');
    if (!isDriven) return [fails(rule, [], { code: 'not driven', data: {} })];
    const checks = checkers[rule](survey);
    const different = new Map(
      checks.toReversed().map((check) => [check.substituted ? quantities(check) : check, check]),
    );
    return [...[...different.values()].reverse(), ...exceptions(rule, survey, checks.length === 0)];
  });
}
