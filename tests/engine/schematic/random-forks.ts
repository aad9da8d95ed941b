import fc from 'fast-check';

/** A part of a line; it is told its number. */
type Writer = (next: () => number) => string;

/** Lines in series and parallel, with changeover switches that lead into two branches, out of them, or both. */
export const forkLines: fc.Arbitrary<string> = fc
  .letrec<{ part: Writer; branch: Writer }>((tie) => {
    const resistor: Writer = (next) => `R${next()} 4 Ω`;
    const several = fc.array(tie('part'), { minLength: 2, maxLength: 3 });
    const joined =
      (sign: string, parts: readonly Writer[]): Writer =>
      (next) =>
        `(${parts.map((part) => part(next)).join(sign)})`;
    const fork = fc
      .tuple(tie('branch'), tie('branch'), fc.constantFrom('into', 'out', 'both'), fc.nat({ max: 3 }))
      .map(([one, other, ways, more]): Writer => (next) => {
        const [a, b] = [next(), next()];
        const branch = (letter: string, inner: string): string =>
          [
            ...(ways === 'out' ? [] : [`changeover S${a}${letter}${letter === 'a' ? ' closed' : ''}`]),
            ...(inner ? [inner] : []),
            ...(ways === 'into' ? [] : [`changeover S${b}${letter}${letter === 'b' ? ' closed' : ''}`]),
          ].join(' + ');
        const branches = [branch('a', one(next)), branch('b', other(next))].map((each) => `(${each})`);
        return `(${[...branches, ...(more === 0 ? [`R${next()} 5 Ω`] : []), ...(more === 1 ? [`V${next()}`] : [])].join(' ∥ ')})`;
      });
    return {
      part: fc.oneof(
        { maxDepth: 3, withCrossShrink: true },
        fc.constant(resistor),
        fork,
        fork,
        several.map((parts) => joined(' + ', parts)),
        several.map((parts) => joined(' ∥ ', parts)),
      ),
      branch: fc.oneof(
        { maxDepth: 2, withCrossShrink: true },
        fc.constant((): string => ''),
        tie('part'),
      ),
    };
  })
  .part.map((part) => {
    let count = 0;
    return `B1 6 V r 1 Ω + ${part(() => (count += 1))} + L99 8 Ω`;
  })
  .filter((line) => line.includes('changeover'));
