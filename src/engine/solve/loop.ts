import { goRound } from './forest.ts';
import type { Branch } from './graph.ts';

/** A loop of branches. */
export interface Loop {
  /** In order, from the chord that closes it on. */
  readonly branches: readonly Branch[];
  /** The e.m.f.s in it that are not 0, counted along it, and whose they are. */
  readonly emfs: readonly bigint[];
  readonly supplies: readonly string[];
}

/** The ids of the components of branches, in the circuit's order. */
export function idsOf(branches: readonly Branch[]): string[] {
  return [...branches].sort((a, b) => a.place - b.place).map(({ component }) => component.id);
}

/** The loop that a chord closes through the forest. */
export function loopOf(chord: Branch): Loop {
  const onwards: { branch: Branch; along: boolean }[] = [{ branch: chord, along: true }];
  const back: typeof onwards = [];
  goRound(chord, (branch, along, ahead) => (ahead ? onwards : back).push({ branch, along }));
  const all = [...onwards, ...back.reverse()];
  const driving = all.filter(({ branch }) => branch.volts);
  return {
    branches: all.map(({ branch }) => branch),
    emfs: driving.map(({ branch, along }) => (along ? branch.volts : -branch.volts)),
    supplies: idsOf(driving.map(({ branch }) => branch)),
  };
}

/** Whether the e.m.f.s of a loop, one at least, all drive the same way round, with no resistance on the way but inside supplies. */
export function isShortCircuit({ branches, emfs }: Loop): boolean {
  const [first = 0n] = emfs;
  return (
    first !== 0n &&
    emfs.every((emf) => emf > 0n === first > 0n) &&
    branches.every(({ component, ohms }) => !ohms || component.kind === 'supply')
  );
}
