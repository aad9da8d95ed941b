import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { curveOf, parseCircuit, type Curve } from '../../../src/engine/index.ts';
import { hasCurve } from '../../../src/engine/circuit/index.ts';

function curve(text: string): Curve {
  const [component] = parseCircuit(text).components;
  assert.ok(component && hasCurve(component));
  return curveOf(component);
}
const [lamp, diode, led] = [curve('L1 6 V 0.5 A filament'), curve('D1'), curve('LED1 1.8 V 15 mA')];
const all = [lamp, diode, led];
const volts = fc.double({ min: -20, max: 20, noNaN: true });

describe('a characteristic', () => {
  it('passes through the origin and through its rating', () => {
    for (const each of all) assert.deepEqual(each(0).current, 0);
    assert.ok(Math.abs(lamp(6).current - 0.5) < 1e-14);
    assert.ok(Math.abs(diode(0.7).current - 0.01) < 1e-12);
    assert.ok(Math.abs(led(1.8).current - 0.015) < 1e-12);
  });

  it('rises everywhere, with the slope and the area that it tells', () => {
    fc.assert(
      fc.property(volts, fc.constantFrom(...all), (v, each) => {
        const h = 1e-6 * Math.max(1, Math.abs(v));
        const [left, here, right] = [each(v - h), each(v), each(v + h)];
        assert.ok(here.slope > 0 && right.current >= left.current);
        const [rise, area] = [right.current - left.current, right.area - left.area];
        const rough = 1e-2 * Math.max(Math.abs(left.slope), Math.abs(right.slope)) * 2 * h;
        assert.ok(Math.abs(rise - here.slope * 2 * h) <= rough + 1e-12, `slope at ${v}`);
        assert.ok(
          Math.abs(area - here.current * 2 * h) <= rough * h + 1e-9 * Math.abs(here.area) + 1e-15,
          `area at ${v}`,
        );
      }),
      { numRuns: 1000 },
    );
  });

  it('of a filament: near its rating the current goes as V to the 0.55 (common practice; lamp makers’ re-rating exponents are 0.5 to 0.6)', () => {
    const exponent = (6 * lamp(6).slope) / lamp(6).current;
    assert.ok(Math.abs(exponent - 0.55) < 1e-12, `${exponent}`);
  });

  it('of a filament is one and the same whichever two of its p.d., current and power are marked', () => {
    const marked = ['L1 6 V 0.5 A', 'L1 6 V 3 W', 'L1 0.5 A 3 W'].map((line) => curve(`${line} filament`));
    fc.assert(
      fc.property(volts, (v) => {
        const [first, ...others] = marked.map((each) => each(v).current);
        for (const other of others)
          assert.ok(Math.abs(other - (first ?? NaN)) <= 1e-14, `${other} at ${v} V`);
      }),
    );
  });

  it('of a filament: cold, it has a tenth of its resistance (common practice), and it is the same both ways', () => {
    assert.ok(Math.abs(1 / lamp(0).slope - 1.2) < 1e-12);
    assert.equal(lamp(-3).current, -lamp(3).current);
  });

  it('of a diode: ten times the current for every n × 59 mV (Shockley’s equation at 25 °C; textbooks say 60 mV for n = 1)', () => {
    const [one, ten] = [diode(0.3).current, diode(0.3 + 1.8 * 0.05916).current];
    assert.ok(Math.abs(ten / one - 10) < 0.02, `${ten / one}`);
  });

  it('of a diode: against its direction next to nothing, whatever the p.d.', () => {
    for (const each of [diode, led]) assert.ok(each(-20).current > -1e-8 && each(-20).current < 0);
  });
});
