import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  circuitFrom,
  lastSetting,
  nearestSetting,
  settingAt,
  sourceRange,
  supplyRanges,
  type CurrentSource,
  type Range,
  type Supply,
} from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { writeQuantity } from '../../../src/engine/quantity/index.ts';

function supply(emf: string, internalResistance?: string, more: object = {}): Supply {
  const [first] = circuitFrom({
    version: 1,
    components: [
      {
        id: 'B1',
        kind: 'supply',
        from: 'a',
        to: 'b',
        emf,
        ...(internalResistance && { internalResistance }),
        ...more,
      },
    ],
  }).components;
  assert.ok(first?.kind === 'supply');
  return first;
}

const text = ({ min, max, step }: Range): string =>
  [min, max, step].map((each) => (each ? writeQuantity(each).text.replace(/\s/u, ' ') : '')).join(', ');

void describe('what a supply may be turned through', () => {
  const table: [string, string | undefined, string, string][] = [
    ['6', undefined, '0 V, 20 V, 1 V', '0 Ω, 5 Ω, 0.2 Ω'],
    ['0', '0', '0 V, 10 V, 0.5 V', '0 Ω, 5 Ω, 0.2 Ω'],
    ['-6', '10', '−20 V, 0 V, 1 V', '0 Ω, 20 Ω, 1 Ω'],
    ['1.5', '0.5', '0 V, 5 V, 0.1 V', '0 Ω, 1 Ω, 0.05 Ω'],
  ];
  for (const [emf, inside, emfs, insides] of table) {
    void it(`of ${emf} V and ${inside ?? 'no'} Ω inside is ${emfs} and ${insides}`, () => {
      const ranges = supplyRanges(supply(emf, inside));
      assert.deepEqual([text(ranges.emf), text(ranges.internalResistance)], [emfs, insides]);
    });
  }

  void it('is what it states, where it states a range', () => {
    const more = { range: { min: 0, max: 12, step: 2 }, internalRange: { min: 0, max: 3, step: 1 } };
    const stated = supply('6', '1', more);
    const { emf, internalResistance } = supplyRanges(stated);
    assert.equal(emf, stated.range);
    assert.equal(internalResistance, stated.internalRange);
  });

  const value = fc.tuple(fc.integer({ min: -9999, max: 9999 }), fc.integer({ min: -4, max: 4 }));
  const positive = value.map(([digits, power]): string => `${Math.abs(digits)}e${power}`);

  void it('runs from 0 to 1, 2 or 5 × 10ⁿ, from two to five times the value, in at least 20 steps', () => {
    fc.assert(
      fc.property(positive, positive, (volts, ohms) => {
        const own = supply(volts, ohms);
        const { emf, internalResistance } = supplyRanges(own);
        for (const [range, { value: now }] of [
          [emf, own.emf],
          [internalResistance, own.internalResistance ?? own.emf],
        ] as const) {
          assert.equal(range.min.value.valueOf(), 0);
          assert.match(range.max.value.valueOf().toExponential(), /^[125]e/);
          const times = now.n ? range.max.value.div(now).valueOf() : 2;
          assert.ok(times >= 2 && times <= 5, `${times}`);
          assert.ok(lastSetting(range) >= 20);
        }
      }),
      { numRuns: 500 },
    );
  });

  void it('meets the value and both ends on its steps, where the value has a finite decimal', () => {
    fc.assert(
      fc.property(positive, (volts) => {
        const own = supply(volts);
        const { emf } = supplyRanges(own);
        for (const found of [emf.min.value, emf.max.value, own.emf.value]) {
          assert.ok(settingAt(emf, nearestSetting(emf, found)).equals(found));
        }
      }),
      { numRuns: 500 },
    );
  });

  void it('of a negative e.m.f. is that of the positive one, turned round', () => {
    fc.assert(
      fc.property(positive, (volts) => {
        const [plus, minus] = [supplyRanges(supply(volts)).emf, supplyRanges(supply(`-${volts}`)).emf];
        if (supply(volts).emf.value.n === 0n) return;
        assert.ok(minus.min.value.equals(plus.max.value.neg()));
        assert.ok(minus.max.value.equals(plus.min.value.neg()));
      }),
    );
  });

  void it('still has steps where no decimal step meets the value', () => {
    const { emf } = supplyRanges(supply('1/3'));
    assert.equal(lastSetting(emf), 20);
  });

  it('of a constant current is its own, else from 0 A to a round value at or beyond twice it', () => {
    const source = (line: string): CurrentSource => {
      const [found] = parseCircuit(`${line} + R1 1 Ω`).components;
      assert.ok(found?.kind === 'source');
      return found;
    };
    const ends = ({ min, max }: Range): string[] =>
      [min, max].map((end) => writeQuantity(end).text.replace(/\s/, ' '));
    assert.deepEqual(ends(sourceRange(source('I1 [-1..2] 0.5 A'))), ['−1 A', '2 A']);
    assert.deepEqual(ends(sourceRange(source('I1 20 mA'))), ['0 mA', '50 mA']);
    assert.deepEqual(ends(sourceRange(source('I1 -0.5 A'))), ['−1 A', '0 A']);
    assert.deepEqual(ends(sourceRange(source('I1 0 A'))), ['0 A', '1 A']);
  });
});
