import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  circuitFrom,
  formOf,
  forwardPoint,
  ratedResistance,
  supplyForms,
} from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';

const positive = fc
  .tuple(fc.integer({ min: 1, max: 240 }), fc.integer({ min: 1, max: 20 }))
  .map(([n, d]) => new Fraction(n, d));

/** A lamp or a load of these ratings. */
const rated = (kind: 'lamp' | 'heater' | 'motor', fields: object): Fraction | undefined => {
  const { components } = circuitFrom({
    version: 1,
    components: [{ id: 'X1', kind, from: 'a', to: 'b', ...fields }],
    terminals: ['a', 'b'],
  });
  const [one] = components;
  assert.ok(one && (one.kind === 'lamp' || one.kind === 'heater' || one.kind === 'motor'));
  return ratedResistance(one);
};

describe('two ratings', () => {
  it('give one resistance, whichever two of volts, watts and amperes are stated', () => {
    fc.assert(
      fc.property(positive, positive, fc.constantFrom('lamp', 'heater', 'motor'), (volts, amperes, kind) => {
        const [V, A, W] = [volts, amperes, volts.mul(amperes)].map((each) => each.toFraction());
        const wanted = volts.div(amperes);
        for (const fields of [
          { ratedVoltage: V, ratedCurrent: A },
          { ratedVoltage: V, ratedPower: W },
          { ratedCurrent: A, ratedPower: W },
          { resistance: wanted.toFraction() },
        ])
          assert.ok(rated(kind, fields)?.equals(wanted), JSON.stringify(fields));
      }),
    );
  });

  it('are met: at its rated p.d. it takes its rated current and power', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 240 }), fc.integer({ min: 1, max: 999 }), (volts, watts) => {
        const solution = solveExact(parseCircuit(`B1 ${volts} V + L1 ${volts} V ${watts} W`));
        assert.ok(solution.power('L1')?.equals(watts));
        assert.ok(solution.current('L1')?.equals(new Fraction(watts, volts)));
      }),
    );
  });
});

describe('the forward point of a diode', () => {
  for (const [line, volts, amperes] of [
    ['D1', 0.7, 0.01],
    ['LED1', 2, 0.02],
    ['LED1 3.2 V', 3.2, 0.02],
    ['LED1 1.6 V 20 mA', 1.6, 0.02],
    ['D1 0.3 V', 0.3, 0.01],
  ] as const)
    it(`of ${line} is ${volts} V at ${amperes} A`, () => {
      const [one] = parseCircuit(line).components;
      assert.ok(one && (one.kind === 'diode' || one.kind === 'led'));
      assert.deepEqual(
        forwardPoint(one).map(({ value }) => Number(value)),
        [volts, amperes],
      );
    });
});

describe('what a supply is', () => {
  const form = (line: string): string => {
    const [one] = parseCircuit(`${line} + R1 1 Ω`).components;
    assert.ok(one?.kind === 'supply');
    return formOf(one);
  };
  for (const [line, wanted] of [
    ['B1 1.5 V', 'cell'],
    ['B1 2 V', 'cell'],
    ['B1 2.04 V', 'battery'],
    ['B1 6 V', 'battery'],
    ['B1 3 × 1.5 V', 'battery'],
    ['B1 [0..1.5] 1 V', 'cell'],
    ['B1 [0..12] 1 V', 'battery'],
    ['cell B1 6 V', 'cell'],
    ['battery B1 1 V', 'battery'],
    ['supply B1 6 V', 'supply'],
  ] as const)
    it(`${line} is a ${wanted}`, () => {
      assert.equal(form(line), wanted);
    });

  it('is one of the words that there are, for any e.m.f.', () => {
    fc.assert(
      fc.property(positive, (volts) => {
        assert.ok(
          supplyForms.includes(form(`B1 ${Number(volts).toFixed(3)} V`) as (typeof supplyForms)[number]),
        );
      }),
    );
  });
});
