import { nearest, say, type Said } from '../../engine/index.ts';
import type { Snapshot } from '../link/index.ts';
import { choiceOf } from './choice.ts';
import { linesOf, type Line } from './lines.ts';

/** What a page asks of the rule checker. */
export interface Wish {
  /** Names of rules; '' for all. */
  readonly rules: string;
  /** A component's id; '' for all. */
  readonly of: string;
}

/** What the rule checker shows of a board. */
export interface View {
  /** What is wrong with the page's wish. */
  readonly problem?: Said;
  /** Why there is nothing to check: the circuit's faults, or the one reason for all rules. */
  readonly obstacles: readonly string[];
  /** The lines that hold. */
  readonly holding: readonly Line[];
  /** The lines that do not apply. */
  readonly others: readonly Line[];
}

const nothing = { obstacles: [], holding: [], others: [] };

/** What the rule checker shows of a board, of all that the page asks for. */
export function viewOf(snapshot: Snapshot, { rules, of }: Wish): View {
  const { faults } = snapshot.readings;
  if (faults.length > 0) return { ...nothing, obstacles: faults.map((fault) => say(fault)) };
  const ids = snapshot.circuit.components.map(({ id }) => id);
  if (of && !ids.includes(of)) {
    const data = { id: of, suggestion: nearest(of, ids) };
    return { ...nothing, problem: { code: 'no such component', data } };
  }
  const all = linesOf(snapshot);
  const choice = choiceOf(rules, [...new Set(all.map(({ check }) => check.rule))]);
  const lines = all.filter(
    ({ check }) => choice.rules.includes(check.rule) && (!of || check.about.includes(of)),
  );
  const holding = lines.filter(({ check }) => check.status === 'holds');
  const [reason, ...more] = new Set(all.map(({ why }) => why));
  const isOne = reason !== undefined && more.length === 0;
  return {
    ...(choice.unknown && { problem: { code: 'unknown rule', data: choice.unknown } }),
    obstacles: isOne ? [reason] : [],
    holding,
    others: isOne ? [] : lines.filter((line) => !holding.includes(line)),
  };
}
