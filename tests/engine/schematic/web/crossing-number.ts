import { isPlanar, type Pair } from './planarity.ts';

/** A piece of an edge, with the number of the whole one. */
interface Part {
  readonly ends: Pair;
  readonly edge: number;
}

const planar = (parts: readonly Part[]): boolean => isPlanar(parts.map(({ ends }) => ends));

/** The parts that are left where none can go without the rest lying in a plane: two of them cross in every drawing. */
function obstacle(parts: readonly Part[]): Part[] {
  let left = [...parts];
  for (const part of parts) {
    const fewer = left.filter((each) => each !== part);
    if (!planar(fewer)) left = fewer;
  }
  return left;
}

/**
 * The least number of crossings that a drawing of a simple graph can have, by trying: up to `most`, undefined beyond. The edges of
 * which `free` is true are not crossed. In a drawing with the fewest no two edges cross that have an end in common, or twice.
 */
export function crossingNumber(
  edges: readonly Pair[],
  most: number,
  free: (edge: number) => boolean = () => false,
): number | undefined {
  const meet = (a: number, b: number): boolean => {
    const [one, other] = [edges[a], edges[b]];
    return one?.some((end) => other?.includes(end)) ?? false;
  };
  const within = (parts: readonly Part[], left: number, done: ReadonlySet<string>): boolean => {
    if (planar(parts)) return true;
    if (left === 0) return false;
    const vertex = Math.max(...parts.flatMap(({ ends }) => ends)) + 1;
    const among = obstacle(parts).filter(({ edge }) => !free(edge));
    return among.some((a, i) =>
      among.slice(i + 1).some((b) => {
        const pair = [a.edge, b.edge].sort().join(' ');
        if (a.edge === b.edge || meet(a.edge, b.edge) || done.has(pair)) return false;
        const halves = [a, b].flatMap(({ ends, edge }) =>
          ends.map((end) => ({ ends: [end, vertex] as const, edge })),
        );
        const rest = parts.filter((part) => part !== a && part !== b);
        return within([...rest, ...halves], left - 1, new Set([...done, pair]));
      }),
    );
  };
  const whole = edges.map((ends, edge) => ({ ends, edge }));
  return Array.from({ length: most + 1 }, (_, i) => i).find((count) => within(whole, count, new Set()));
}
