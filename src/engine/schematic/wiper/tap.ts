import { twinOf } from '../../circuit/index.ts';
import type { Single, Tree } from '../../topology/index.ts';
import type { Measure } from '../block.ts';

/** What stands on one side of the contact of a potentiometer. */
export interface Side {
  /** The part of its track. */
  readonly single: Single;
  /** What is in series with that, away from the contact. */
  readonly rest: readonly Tree[];
  /** What is beside these: it leads to the contact as well. */
  readonly others: readonly Tree[];
  /** All of it, as it is in the circuit. */
  readonly whole: Tree;
}

/** Every way to see a part of a chain as one side of a contact, which is at its end or its start. */
function sidesOf(whole: Tree, at: 'start' | 'end', { part }: Measure): Side[] {
  const branches = whole.kind === 'parallel' ? whole.parts : [whole];
  return branches.flatMap((branch) => {
    const parts = branch.kind === 'series' ? branch.parts : [branch];
    const [single, rest] = at === 'end' ? [parts.at(-1), parts.slice(0, -1)] : [parts[0], parts.slice(1)];
    if (single?.kind !== 'component' || !part(single.id).track) return [];
    return [{ single, rest, others: branches.filter((each) => each !== branch), whole }];
  });
}

/** The two sides of a potentiometer's contact, where one part of a chain leads to it and the next one away from it. */
export function tapOf(before: Tree, after: Tree, measure: Measure): readonly [Side, Side] | undefined {
  const onwards = sidesOf(after, 'start', measure);
  for (const one of sidesOf(before, 'end', measure)) {
    const other = onwards.find(({ single }) => single.id === twinOf(one.single.id));
    if (other) return [one, other];
  }
  return undefined;
}

/** Parts in series, the two that meet at the contact of a potentiometer as one. */
export function gather(parts: readonly Tree[], measure: Measure): readonly Tree[] {
  const gathered: Tree[] = [];
  for (let i = 0; i < parts.length; i++) {
    const [one, next] = [parts[i], parts[i + 1]];
    if (!one) continue;
    const isTapped = next && tapOf(one, next, measure);
    gathered.push(isTapped ? { kind: 'series', parts: [one, next], from: one.from, to: next.to } : one);
    if (isTapped) i++;
  }
  return gathered;
}
