import { total } from './arithmetic.ts';
import { idsOf, labelsOf, telling, type Block } from './block.ts';
import { balance, fails, holds, isTaken, spreadOf, sums } from './check.ts';
import type { Equation, RuleCheck, Term } from './rule-check.ts';
import { isClosed, type Survey } from './survey.ts';
import { flipped, term } from './terms.ts';

/** What lies between the ends of a block: its branches, if it has them, and ideal voltmeters. */
function between(
  block: Block,
  { lookingOn, solution, terms }: Survey,
): readonly (readonly [label: string, voltage: readonly Term[]])[] {
  const { from, to } = block.tree;
  const branches = block.tree.kind === 'parallel' ? block.parts : [block];
  const meters = lookingOn.filter(
    (one) => (one.from === from && one.to === to) || (one.from === to && one.to === from),
  );
  return [
    ...branches.map(
      ({ label, voltage, ends: [id] }) =>
        [label, voltage.length > 0 ? voltage : [term(`V_${id}`, solution.voltage(id))]] as const,
    ),
    ...meters.map((meter) => [meter.id, terms.voltage(meter, meter.from !== from)] as const),
  ];
}

/** In parallel: the same p.d. across each branch, and across a voltmeter beside it. */
export function parallelVoltage(survey: Survey): readonly RuleCheck[] {
  const largest = survey.largest('V');
  return survey.blocks.flatMap((block) => {
    const sides = between(block, survey);
    const around = survey.around.get(block);
    if (sides.length < 2 || isClosed(block) || around?.tree.kind === 'parallel') return [];
    // What is all that is outside a supply tells the supply's p.d. too.
    if (block.component?.kind === 'supply' && around?.parts.length === 2) return [];
    const supply = survey.across(block);
    const voltages = [...(supply ? [flipped(supply.voltage)] : []), ...sides.map(([, voltage]) => voltage)];
    const isBackwards = Number(total(block.voltage)) < 0;
    // What is taken away stands last.
    const ordered = voltages.map((side) =>
      (isBackwards ? flipped(side) : side).toSorted((a, b) => Number(isTaken(a)) - Number(isTaken(b))),
    );
    const equation = sums(...ordered);
    const ids = sides.map(([label]) => label);
    const about = [...idsOf(supply ? [supply, block] : [block]), ...ids.slice(block.parts.length || 1)];
    return holds(
      'parallel p.d.',
      about,
      equation,
      { code: 'side by side', data: { ids } },
      spreadOf(equation, largest),
    );
  });
}

/** In parallel: the branches' currents add up. */
export function parallelCurrent(survey: Survey): readonly RuleCheck[] {
  const largest = survey.largest('I');
  return survey.groups.flatMap((group) => {
    const chain = survey.around.get(group);
    // What closes the circuit through a bridge has no current as a whole.
    if (!chain && group.supplies.length > 0) return [];
    const beside = chain && telling(chain.parts.filter((part) => part !== group));
    const whole = beside?.current ?? [term(`I_(${group.label})`, total(group.current))];
    const equation = balance(whole, group.current);
    const why = { code: 'side by side', data: { ids: labelsOf(group.parts) } } as const;
    const about = [...(beside?.component ? idsOf([beside]) : []), ...idsOf([group])];
    return holds('parallel current', about, equation, why, spreadOf(equation, largest));
  });
}

/** In parallel: the reciprocals of the resistances add up; the whole has less than any branch. */
export function parallelResistance(survey: Survey): readonly RuleCheck[] {
  const rule = 'parallel resistance';
  return survey.groups.flatMap((group) => {
    const { parts, supplies, resistance } = group;
    const about = idsOf([group]);
    const bare = parts.filter((part) => Number(part.resistance.value) === 0);
    if (supplies.length > 0) return [fails(rule, about, { code: 'supply inside', data: { ids: supplies } })];
    if (bare.length > 0) return [fails(rule, about, { code: 'bypassed', data: { ids: labelsOf(bare) } })];
    const whole = { ...resistance, name: survey.totalName(group) ?? resistance.name };
    const terms = parts.map((part) => part.resistance);
    const least = terms.toSorted((a, b) => Number(a.value) - Number(b.value)).slice(0, 1);
    const within = survey.measured(whole, group.voltage, group.current);
    const equations: readonly Equation[] = [
      { form: 'reciprocals', relation: 'equal', sides: [[whole], terms] },
      { form: 'sum', relation: 'less', sides: [[whole], least] },
    ];
    const why = { code: 'side by side', data: { ids: labelsOf(parts) } } as const;
    return equations.map((equation) => holds(rule, about, equation, why, within));
  });
}
