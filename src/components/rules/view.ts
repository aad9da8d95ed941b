import { checkRules, nearest, say, type Said } from '../../engine/core.ts';
import type { Snapshot } from '../link/index.ts';
import { choiceOf } from './choice.ts';
import { holdingOf, refusalsOf, type Holding, type Refusal } from './lines.ts';

/** What a page asks of the rule checker. */
export interface Wish {
  /** Names of rules; '' for all. */
  readonly rules: string;
  /** A component's id; '' for all. */
  readonly of: string;
  /** Whether the numbers are still to be predicted. */
  readonly predict: boolean;
}

/** What the rule checker shows of a board. */
export interface View {
  /** What is wrong with the page's wish. */
  readonly problem?: Said;
  /** Why there is nothing to check: the circuit's faults, or the one reason for all rules. */
  readonly obstacles: readonly string[];
  readonly holding: readonly Holding[];
  readonly refusals: readonly Refusal[];
}

const nothing = { obstacles: [], holding: [], refusals: [] };

/** What the rule checker shows of a board, of all that the page asks for. */
export function viewOf(snapshot: Snapshot, { rules, of, predict }: Wish): View {
  const { faults } = snapshot.readings;
  if (faults.length > 0) return { ...nothing, obstacles: faults.map((fault) => say(fault)) };
  const ids = snapshot.circuit.components.map(({ id }) => id);
  if (of && !ids.includes(of)) {
    const data = { id: of, suggestion: nearest(of, ids) };
    return { ...nothing, problem: { code: 'no such component', data } };
  }
  const all = checkRules(snapshot.circuit, snapshot.readings);
  const choice = choiceOf(rules, [...new Set(all.map(({ rule }) => rule))]);
  const checks = all.filter(({ rule, about }) => choice.rules.includes(rule) && (!of || about.includes(of)));
  const reasons = new Set(all.map(({ status, why }) => (status === 'holds' ? '' : say(why))));
  const [only = ''] = reasons.size === 1 ? reasons : [];
  return {
    ...(choice.unknown && {
      problem: { code: 'not a choice', data: { ...choice.unknown, of: 'name of a rule' } },
    }),
    obstacles: only ? [only] : [],
    holding: holdingOf(snapshot, checks, predict),
    refusals: only ? [] : refusalsOf(snapshot, checks),
  };
}
