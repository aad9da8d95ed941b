import type { Parallel } from '../../topology/index.ts';
import {
  blockOf,
  chain,
  even,
  forkLength,
  largest,
  line,
  padOf,
  sharesOf,
  spread,
  type Block,
  type Measure,
} from '../block.ts';
import { forkOf, type Forked } from './fork.ts';

/** The least wire between two changeover switches. */
const wireBetween = 8;
/** From the line to the contacts of a changeover switch. */
export const contactGap = 12;
/** From the line to where the labels of its contacts begin, beyond a wire across one. */
export const labelGap = 32;

/** Two branches with a changeover switch before them, behind them, or both. */
function forked({ prongs, start, end }: Forked, { from, to }: Parallel, measure: Measure): Block {
  const rows = prongs.map(({ parts, node }, i): Block => {
    const block = chain(
      parts.map((part) => blockOf(part, measure)),
      node,
    );
    const contact = start?.[i] ?? end?.[i];
    const bare = contact && sharesOf(contact, measure.part(contact.id));
    const carries = parts.length > 0 ? block.carries : (bare ?? []);
    return {
      ...block,
      carries,
      before: Math.max(contactGap, block.before),
      after: Math.max(contactGap, block.after),
    };
  });
  const [first, second] = spread(rows);
  const half = even((second?.offset ?? 0) / 2);
  const branches = [first, second].flatMap((row, i) => (row ? [{ ...row, offset: i ? half : -half }] : []));
  const widths = [start, end]
    .flatMap((fork) => fork ?? [])
    .map(({ id }) => measure.part(id).caption.labelWidth);
  const room = padOf({ from, to });
  const text = labelGap + (measure.upright ? even(Math.max(...widths) + 6) : line + 4);
  return {
    kind: 'parallel',
    from,
    to,
    length:
      Math.max(
        wireBetween,
        largest(branches, ({ length }) => length),
      ) +
      (start ? forkLength : room) +
      (end ? forkLength : room),
    before: Math.max(
      text,
      largest(branches, ({ before, offset }) => before - offset),
    ),
    after: Math.max(
      text,
      largest(branches, ({ after, offset }) => after + offset),
    ),
    offset: 0,
    carries: branches.flatMap(({ carries }) => carries),
    parts: branches,
    ...(start && { start }),
    ...(end && { end }),
  };
}

/** A group with branches that a changeover switch leads into or out of, those two apart from any others; undefined where there are none. */
export function forkBlock(tree: Parallel, measure: Measure, hanging: boolean): Block | undefined {
  const { parts, from, to } = tree;
  const fork = forkOf(tree, measure);
  if (!fork || parts.length === 2) return fork && forked(fork, tree, measure);
  const [one, other] = fork.branches;
  const pair: Parallel = { kind: 'parallel', parts: [one, other], from, to };
  const gathered = parts.flatMap((each) => (each === one ? [pair] : each === other ? [] : [each]));
  return blockOf({ ...tree, parts: gathered }, measure, hanging);
}
