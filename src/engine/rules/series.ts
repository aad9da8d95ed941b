import { isSupply } from '../circuit/index.ts';
import { add, negate, total } from './arithmetic.ts';
import { bears, carries, plainest, type Block } from './block.ts';
import { balance, flipped, magnitudes, sums } from './equation.ts';
import { driven, found, type Found } from './found.ts';
import type { Term } from './rule-check.ts';
import { isClosed, type Survey } from './survey.ts';

/** In series: the same current everywhere; and where neighbours are not in series. */
export const seriesCurrent = ({ blocks, around }: Survey): readonly Found[] =>
  blocks.flatMap((block) => {
    if (block.tree.kind === 'series') {
      const parts = block.parts.filter(carries);
      return parts.length > 1
        ? found('one path', parts, sums(...parts.map(({ current }) => magnitudes(current))))
        : [];
    }
    const beside = around.get(block)?.parts ?? [];
    const before = beside.slice(0, beside.indexOf(block)).findLast(carries) ?? beside.find(carries);
    const after = block.parts.flatMap((branch) => [branch, ...branch.parts]).find(carries);
    return before && after ? found('current splits', [before, after]) : [];
  });

/** The chains that have a p.d. and a resistance as wholes: not the one that closes a circuit through a bridge. */
const chains = ({ blocks, around }: Survey): readonly Block[] =>
  blocks.filter(
    (block) =>
      block.tree.kind === 'series' && (around.has(block) || isClosed(block) || block.supplies.length === 0),
  );

/** The p.d. across a chain by another name: that across what is beside it; else it has a name of its own. */
function outside(chain: Block, survey: Survey): readonly Term[] {
  const group = survey.around.get(chain);
  const beside = plainest(group?.parts.filter((part) => part !== chain) ?? []);
  const supply = group && survey.across(group);
  if (beside) return supply && beside.voltage.length > 1 ? flipped(supply.voltage) : beside.voltage;
  const [start, end] = [chain.tree.from, chain.tree.to].map((node) => survey.solution.potential(node));
  const value = start !== undefined && end !== undefined ? add(start, negate(end)) : total(chain.voltage);
  return [{ name: `V_(${chain.label})`, value }];
}

/** In series: the p.d.s add up. */
export const seriesVoltage = (survey: Survey): readonly Found[] =>
  chains(survey).flatMap((chain) => {
    const parts = chain.parts.filter(bears);
    const rises = isClosed(chain) ? parts.filter(({ component }) => component && isSupply(component)) : [];
    const whole = isClosed(chain) ? flipped(rises.flatMap(({ voltage }) => voltage)) : outside(chain, survey);
    const drops = parts.filter((part) => !rises.includes(part)).flatMap(({ voltage }) => voltage);
    if (whole.length === 0 || parts.length < (isClosed(chain) ? 3 : 2)) return [];
    return found('one path', parts, balance(whole, drops));
  });

/** In series: the resistances add up. */
export const seriesResistance = (survey: Survey): readonly Found[] =>
  chains(survey).flatMap((chain) => {
    const parts = chain.parts.slice(isClosed(chain) ? 1 : 0).filter(bears);
    if (parts.length < 2) return [];
    if (parts.some(({ supplies }) => supplies.length > 0)) return driven(parts);
    return found(
      'one path',
      parts,
      sums(
        [survey.resistance(chain)],
        parts.map(({ resistance }) => resistance),
      ),
    );
  });
