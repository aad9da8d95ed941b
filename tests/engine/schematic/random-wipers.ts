import fc from 'fast-check';
import { isTrack, type Circuit, type Component } from '../../../src/engine/circuit/index.ts';

/** A part of a line; it is told its number. */
type Writer = (next: () => number) => string;

const totals = [10, 50, 100, 2200];

/** Lines in series and parallel, with potentiometers whose contact leads on, or not, on either side of it. */
export const wiperLines: fc.Arbitrary<string> = fc
  .letrec<{ part: Writer; beside: Writer; rest: Writer }>((tie) => {
    const resistor: Writer = (next) => `R${next()} 4 Ω`;
    const several = fc.array(tie('part'), { minLength: 2, maxLength: 3 });
    const joined =
      (sign: string, parts: readonly Writer[]): Writer =>
      (next) =>
        `(${parts.map((part) => part(next)).join(sign)})`;
    const potentiometer = fc
      .record({
        rests: fc.tuple(tie('rest'), tie('rest')),
        besides: fc.tuple(tie('beside'), tie('beside')),
        total: fc.constantFrom(...totals),
        share: fc.integer({ min: 0, max: 10 }),
        range: fc.boolean(),
        rated: fc.boolean(),
        named: fc.nat({ max: 3 }),
      })
      .map(({ rests, besides, total, share, range, rated, named }): Writer => (next) => {
        const number = next();
        const own = (total * share) / 10;
        const [a, b] = [
          `potentiometer R${number}a ${range ? `[0..${total} step ${total / 10}] ` : ''}${own} Ω${rated ? ' 0.5 W' : ''}`,
          `potentiometer R${number}b ${total - own} Ω`,
        ];
        const [before, after] = rests.map((rest) => rest(next));
        const arms = [before ? `(${before} + ${b})` : b, after ? `(${a} + ${after})` : a];
        const sides = besides.map((beside, i) => {
          const text = beside(next);
          return text ? `(${arms[i] ?? ''} ∥ ${text})` : (arms[i] ?? '');
        });
        // A point with a letter at the contact, now and then.
        return `(${sides.join(named === 0 ? ` + @P${number} + ` : ' + ')})`;
      });
    const nothing = fc.constant((): string => '');
    const meter: Writer = (next) => `V${next()}`;
    return {
      part: fc.oneof(
        { maxDepth: 3, withCrossShrink: true },
        fc.constant(resistor),
        potentiometer,
        potentiometer,
        several.map((parts) => joined(' + ', parts)),
        several.map((parts) => joined(' ∥ ', parts)),
      ),
      rest: fc.oneof({ maxDepth: 2, withCrossShrink: true }, nothing, nothing, tie('part')),
      beside: fc.oneof(
        { maxDepth: 2, withCrossShrink: true },
        nothing,
        fc.constant(meter),
        tie('part'),
        several.map((parts) => joined(' + ', parts)),
        fc.tuple(tie('part'), fc.constant(meter)).map((parts) => joined(' ∥ ', parts)),
      ),
    };
  })
  .part.map((part) => {
    let count = 0;
    return `B1 6 V r 1 Ω + ${part(() => (count += 1))} + L99 8 Ω`;
  })
  .filter((line) => line.includes('potentiometer'));

/** The circuit with two plain resistors in the place of each potentiometer. */
export const plain = (circuit: Circuit): Circuit => ({
  ...circuit,
  components: circuit.components.map((each): Component => {
    if (!isTrack(each)) return each;
    const { id, from, to, resistance } = each;
    return { id, kind: 'resistor', from, to, resistance };
  }),
});
