import { isSupply } from '../circuit/index.ts';
import { total, zero } from './arithmetic.ts';
import { bears, telling } from './block.ts';
import { balance, flipped, isTaken, sums } from './equation.ts';
import { driven, found, type Found } from './found.ts';
import type { Equation } from './rule-check.ts';
import { isClosed, type Survey } from './survey.ts';

/** In parallel: the same p.d. across each branch, and across an ideal voltmeter beside it. */
export const parallelVoltage = (survey: Survey): readonly Found[] =>
  survey.blocks.flatMap((block) => {
    const { from, to, kind } = block.tree;
    const around = survey.around.get(block);
    const supply = survey.across(block);
    const isAlone = block.component && isSupply(block.component) && around?.parts.length === 2;
    // A branch tells the p.d. of its group, and all that is outside a supply tells the supply's.
    if (isClosed(block) || around?.tree.kind === 'parallel' || supply === block || isAlone) return [];
    const meters = survey.watching
      .filter((meter) => (meter.from === from && meter.to === to) || (meter.from === to && meter.to === from))
      .map(({ id, ...meter }) =>
        survey.step({ kind: 'component', id, reversed: meter.from !== from, from, to }),
      );
    const sides = [...(kind === 'parallel' ? block.parts : [block]), ...meters];
    if (sides.length < 2) return [];
    const voltages = sides.map((side) =>
      bears(side)
        ? side.voltage
        : [{ name: `V_${side.component ? side.label : `(${side.label})`}`, value: zero }],
    );
    if (supply) voltages.unshift(flipped(supply.voltage));
    const isBackwards = Number(total(block.voltage)) < 0;
    // What is taken away stands last.
    const ordered = voltages
      .map((side) => (isBackwards ? flipped(side) : side))
      .map((side) => [...side.filter((one) => !isTaken(one)), ...side.filter(isTaken)]);
    return found('side by side', sides, sums(...ordered));
  });

/** In parallel: the branches' currents add up. */
export const parallelCurrent = ({ blocks, around }: Survey): readonly Found[] =>
  blocks.flatMap((group) => {
    if (group.tree.kind !== 'parallel') return [];
    const chain = around.get(group);
    const beside = telling(chain?.parts.filter((part) => part !== group) ?? []);
    // What closes a circuit through a bridge has no current as a whole.
    if (!beside && group.supplies.length > 0) return [];
    const whole = beside?.current ?? [{ name: `I_(${group.label})`, value: total(group.current) }];
    return found('side by side', group.parts, balance(whole, group.current));
  });

/** In parallel: the reciprocals of the resistances add up; the whole has less than any branch. */
export const parallelResistance = (survey: Survey): readonly Found[] =>
  survey.blocks.flatMap((group) => {
    const { parts } = group;
    if (group.tree.kind !== 'parallel') return [];
    if (group.supplies.length > 0) return [driven(parts)];
    const bare = parts.filter(({ resistance }) => Number(resistance.value) === 0);
    if (bare.length > 0) return [found('bypassed', bare)];
    const whole = [survey.resistance(group)];
    const terms = parts.map(({ resistance }) => resistance);
    const [least = []] = terms.toSorted((a, b) => Number(a.value) - Number(b.value)).map((one) => [one]);
    const equations: readonly Equation[] = [
      { form: 'reciprocals', relation: 'equal', sides: [whole, terms] },
      { form: 'sum', relation: 'less', sides: [whole, least] },
    ];
    return equations.map((equation) => found('side by side', parts, equation));
  });
