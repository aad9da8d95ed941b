/** The slope of the straight line through points whose coordinates are taken as logarithms (least squares): y grows as x to this power. */
export function exponentOf(points: readonly (readonly [x: number, y: number])[]): number {
  const logs = points.map(([x, y]) => [Math.log(x), Math.log(y)] as const);
  const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b) / values.length;
  const [middle, height] = [mean(logs.map(([x]) => x)), mean(logs.map(([, y]) => y))];
  const [slope, spread] = [
    logs.reduce((sum, [x, y]) => sum + (x - middle) * (y - height), 0),
    logs.reduce((sum, [x]) => sum + (x - middle) ** 2, 0),
  ];
  return slope / spread;
}

const collections: readonly (readonly [object, readonly string[]])[] = [
  [Map.prototype, ['get', 'set', 'has', 'delete']],
  [Set.prototype, ['add', 'has', 'delete']],
  [Array.prototype, ['push', 'pop', 'at']],
];

/** How often some work reads or changes a map, a set or the end of a list: a count that no clock and no other work disturbs. */
export function operationsOf(work: () => void): number {
  let count = 0;
  const restore = collections.flatMap(([prototype, names]) =>
    names.map((name) => {
      const original = Reflect.get(prototype, name) as (...given: unknown[]) => unknown;
      Reflect.set(prototype, name, function (this: unknown, ...given: unknown[]): unknown {
        count++;
        return Reflect.apply(original, this, given);
      });
      return () => Reflect.set(prototype, name, original);
    }),
  );
  try {
    work();
  } finally {
    for (const back of restore) back();
  }
  return count;
}

/** The processor's time that each of some pieces of work takes, in microseconds: the least of several turns. */
export function leastTimes(pieces: readonly (() => void)[], turns = 4): readonly number[] {
  const least = pieces.map(() => Infinity);
  for (let turn = 0; turn < turns; turn++) {
    pieces.forEach((work, place) => {
      const start = process.cpuUsage();
      work();
      const { user, system } = process.cpuUsage(start);
      least[place] = Math.min(least[place] ?? Infinity, user + system);
    });
  }
  return least;
}
