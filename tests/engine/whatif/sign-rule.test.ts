// Which way each current and p.d. goes when one resistance of a series–parallel circuit rises: the node of the tree where the two part
// decides. In series the other's falls; in parallel it rises, or stays where the block lies straight across an ideal supply.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { Fraction, parseCircuit, sensitivity, solveExact, withValue } from '../../../src/engine/index.ts';

/** A resistor, or parts in series and in parallel by turns. */
type Shape = number | readonly Shape[];

const { shape } = fc.letrec<{ shape: Shape }>((tie) => ({
  shape: fc.oneof(
    { maxDepth: 4 },
    { weight: 2, arbitrary: fc.integer({ min: 1, max: 30 }) },
    { weight: 3, arbitrary: fc.array(tie('shape'), { minLength: 2, maxLength: 3 }) },
  ),
}));

/** The line of a shape, and for each resistor the way down to it: at each level, which part it is in. */
function drawn(whole: Shape, inSeries: boolean): { line: string; ways: (readonly number[])[] } {
  const ways: (readonly number[])[] = [];
  const text = (each: Shape, series: boolean, way: readonly number[]): string => {
    if (typeof each !== 'number') {
      const parts = each.map((one, k) => text(one, !series, [...way, k]));
      return `(${parts.join(series ? ' + ' : ' ∥ ')})`;
    }
    ways.push(way);
    return `R${ways.length} ${each} Ω`;
  };
  return { line: text(whole, inSeries, []), ways };
}

/** A circuit, one of its resistors that is raised, and the ways that the rule says the current and the p.d. of each go. */
const circuits = fc
  .tuple(shape, fc.boolean(), fc.constantFrom(0, 2), fc.nat())
  .filter(([whole]) => typeof whole !== 'number')
  .map(([whole, inSeries, inside, draw]) => {
    const { line, ways } = drawn(whole, inSeries);
    const own = draw % ways.length;
    const straightAcross = !inSeries && inside === 0;
    const rule = ways.map((way, other): readonly [current: string, volts: string] => {
      const mine = ways[own] ?? [];
      if (other === own) return ['falls', straightAcross && mine.length === 1 ? 'stays the same' : 'rises'];
      const depth = way.findIndex((step, k) => step !== mine[k]);
      const isSeries = inSeries === (depth % 2 === 0);
      const goes = isSeries ? 'falls' : depth === 0 && straightAcross ? 'stays the same' : 'rises';
      return [goes, goes];
    });
    const circuit = parseCircuit(`B1 12 V${inside ? ` r ${inside} Ω` : ''} + ${line}`);
    return { circuit, own: `R${own + 1}`, rule };
  });

const words = ['falls', 'stays the same', 'rises'];

describe('when one resistance of a series–parallel circuit rises', () => {
  it('in series the other’s current and p.d. fall, in parallel they rise, or stay straight across an ideal supply', () => {
    fc.assert(
      fc.property(circuits, fc.integer({ min: 1, max: 99 }), ({ circuit, own, rule }, more) => {
        const ohms = circuit.components.find(({ id }) => id === own);
        assert.ok(ohms?.kind === 'resistor');
        const raised = withValue(circuit, own, ohms.resistance.value.add(new Fraction(more, 10)));
        const [before, after] = [solveExact(circuit), solveExact(raised)];
        rule.forEach((wanted, k) => {
          const goes = ['I', 'V'].map((letter) => {
            const [old, now] = [before, after].map((each) => each.quantity(`${letter}_R${k + 1}`));
            assert.ok(old && now);
            return words[now.compare(old) + 1];
          });
          assert.deepEqual(goes, wanted, `R${k + 1} by ${own}`);
        });
      }),
      { numRuns: 1000 },
    );
  });

  it('the sensitivity has that direction, and its reasons end in it', () => {
    fc.assert(
      fc.property(circuits, fc.nat(), ({ circuit, own, rule }, draw) => {
        const other = draw % rule.length;
        ['I', 'V'].forEach((letter, k) => {
          const found = sensitivity(circuit, `${letter}_R${other + 1}`, own);
          assert.equal(found.direction, rule[other]?.[k], `${letter}_R${other + 1} by ${own}`);
          const last = found.reasons.at(-1);
          assert.ok(last && 'change' in last.data);
          assert.equal(last.data.change, found.direction);
          assert.deepEqual(last.data.ids, [`R${other + 1}`]);
        });
      }),
      { numRuns: 1000 },
    );
  });
});
