import type { Circuit } from '../../circuit/index.ts';
import type { Sign } from '../relation.ts';
import { every, flow, isDriver, points, structure, type Part } from '../structure.ts';

/** A part that is passed on the way along a branch: `along` is 1 where its own current is counted the same way. */
export interface Passed {
  readonly part: Part;
  readonly along: Sign;
  readonly tail: string;
  readonly head: string;
}

/** What one current flows through from a junction to the next. */
export interface Branch {
  /** The quantity name of its current, which is that of one of its parts. */
  readonly current: string;
  readonly passed: readonly Passed[];
  readonly tail: string;
  readonly head: string;
}

/** A part without a supply is one, however it is made; one with a supply is what it is made of. */
function atoms(part: Part): readonly Part[] {
  const isWhole = part.parts.length === 0 || (part.from !== part.to && every(part).every(isPlain));
  return isWhole ? [part] : part.parts.flatMap(atoms);
}

const isPlain = (part: Part): boolean => !isDriver(part);

/** Whether the current of a branch is that of a supply of constant current. */
export const isGiven = ({ passed }: Branch): boolean => passed.some(({ part }) => part.kind === 'source');

const turned = ({ part, along, tail, head }: Passed): Passed => ({
  part,
  along: along === 1 ? -1 : 1,
  tail: head,
  head: tail,
});

/** The same way from its other end. */
const back = (way: readonly Passed[]): readonly Passed[] => way.map(turned).reverse();

/** The branches of a circuit between the points where more than two of its parts meet; a single loop is one from a point to itself. */
export function branchesOf(circuit: Circuit): readonly Branch[] {
  const point = points(circuit);
  const ways = structure(circuit)
    .flatMap(atoms)
    .map((part): readonly Passed[] => {
      const [from, to] = [point(part.from), point(part.to)];
      const [tail, head] = flow(part) === 1 ? [from, to] : [to, from];
      return [{ part, along: 1, tail, head }];
    });
  const ends = (way: readonly Passed[]): readonly string[] => [way[0]?.tail ?? '', way.at(-1)?.head ?? ''];
  const nodes = new Set(ways.flatMap(ends));
  for (const node of nodes) {
    const here = ways.filter((way) => ends(way).includes(node));
    const [one, other] = here;
    if (here.length !== 2 || !one || !other) continue;
    const [first, second] = [one.at(-1)?.head === node ? one : back(one), other];
    ways.splice(ways.indexOf(one), 1, [...first, ...(second[0]?.tail === node ? second : back(second))]);
    ways.splice(ways.indexOf(other), 1);
  }
  return ways.flatMap((way) => {
    const named = way.find(({ part }) => isPlain(part)) ?? way[0];
    if (!named) return [];
    const passed = named.along === 1 ? way : back(way);
    const [tail = '', head = ''] = ends(passed);
    return [{ current: `I_${named.part.label}`, passed, tail, head }];
  });
}
