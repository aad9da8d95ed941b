import { add, negate, total } from './arithmetic.ts';
import { idsOf, labelsOf, plainest, type Block } from './block.ts';
import { balance, fails, holds, spreadOf, sums } from './check.ts';
import type { RuleCheck, Term } from './rule-check.ts';
import { isClosed, type Survey } from './survey.ts';
import { flipped, isJoin, magnitudes, term } from './terms.ts';

const carries = ({ component }: Block): boolean => component !== undefined && !isJoin(component);
const bears = ({ voltage }: Block): boolean => voltage.length > 0;

/** In series: the same current everywhere; and where neighbours are not in series. */
export function seriesCurrent(survey: Survey): readonly RuleCheck[] {
  const rule = 'series current';
  const { chains, groups, around } = survey;
  const largest = survey.largest('I');
  const applied = chains.flatMap(({ parts }) => {
    const carriers = parts.filter(carries);
    if (carriers.length < 2) return [];
    const equation = sums(...carriers.map(({ current }) => magnitudes(current)));
    const why = { code: 'one path', data: { ids: labelsOf(carriers) } } as const;
    return holds(
      rule,
      idsOf(parts.filter(({ component }) => component)),
      equation,
      why,
      spreadOf(equation, largest),
    );
  });
  const split = groups.flatMap((group) => {
    const parts = around.get(group)?.parts ?? [];
    const before = parts.slice(0, parts.indexOf(group)).findLast(carries) ?? parts.find(carries);
    const after = group.parts.flatMap((branch) => [branch, ...branch.parts]).find(carries);
    if (!before || !after) return [];
    const ids = [before.label, after.label];
    return fails(rule, ids, { code: 'current splits', data: { ids } });
  });
  return [...applied, ...split];
}

/** What the p.d. across a chain is called elsewhere: that across what is beside it; else it has its own name. */
function outside(chain: Block, survey: Survey): readonly Term[] {
  const { solution, around } = survey;
  const group = around.get(chain);
  const supply = group && survey.across(group);
  const beside = group && plainest(group.parts.filter((part) => part !== chain));
  if (beside && supply && beside.voltage.length > 1) return flipped(supply.voltage);
  if (beside) return beside.voltage;
  const [start, end] = [solution.potential(chain.tree.from), solution.potential(chain.tree.to)];
  return [term(`V_(${chain.label})`, start && end ? add(start, negate(end)) : total(chain.voltage))];
}

/** In series: the p.d.s add up. */
export function seriesVoltage(survey: Survey): readonly RuleCheck[] {
  const largest = survey.largest('V');
  return survey.chains.flatMap((chain) => {
    const closed = isClosed(chain);
    const parts = chain.parts.filter(bears);
    const drops = parts.filter(({ component }) => !closed || component?.kind !== 'supply');
    const rises = parts.filter((part) => !drops.includes(part));
    const whole = closed ? flipped(rises.flatMap(({ voltage }) => voltage)) : outside(chain, survey);
    if (parts.length < (closed ? 3 : 2) || whole.length === 0) return [];
    const sides = balance(
      whole,
      drops.flatMap(({ voltage }) => voltage),
    );
    return holds(
      'series p.d.',
      idsOf(parts),
      sides,
      { code: 'one path', data: { ids: labelsOf(parts) } },
      spreadOf(sides, largest),
    );
  });
}

/** In series: the resistances add up. */
export function seriesResistance(survey: Survey): readonly RuleCheck[] {
  const rule = 'series resistance';
  return survey.chains.flatMap((chain) => {
    const rest = chain.parts.slice(isClosed(chain) ? 1 : 0).filter(bears);
    const supplies = rest.flatMap((part) => part.supplies);
    if (rest.length < 2) return [];
    if (supplies.length > 0)
      return fails(rule, idsOf(rest), { code: 'supply inside', data: { ids: supplies } });
    const whole = { ...chain.resistance, name: survey.totalName(chain) ?? chain.resistance.name };
    const parts = rest.map(({ resistance }) => resistance);
    const why = { code: 'one path', data: { ids: labelsOf(rest) } } as const;
    const voltage = rest.flatMap((part) => part.voltage);
    return holds(
      rule,
      idsOf(rest),
      sums([whole], parts),
      why,
      survey.measured(whole, voltage, chain.current),
    );
  });
}
