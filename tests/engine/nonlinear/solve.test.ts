import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { hasCurve, withValue } from '../../../src/engine/circuit/index.ts';
import { curveOf, parseCircuit, solve, solveExact, track, type Solution } from '../../../src/engine/index.ts';
import { curvedCircuits } from './random-circuit.ts';

const solved = (line: string): Solution => solve(parseCircuit(line));
const near = (found: number | undefined, wanted: number, within: number): void => {
  assert.ok(found !== undefined && Math.abs(found - wanted) <= within, `${found} is not ${wanted}`);
};

/** Whether a fault is one of constant currents. */
const isConstant = (code: string): boolean =>
  ['current without a path', 'currents in contradiction', 'p.d. undetermined'].includes(code);

describe('a circuit with curves', () => {
  it('settles where diodes only leak, whose p.d.s waver for ever', () => {
    const [dead, leaking] = [
      'B0 6 V r 1 Ω + (((LED0 ∥ diode X5 0.7 V reversed broken) + led X4 1.6 V) ∥ (diode X8 0.3 V reversed + @a + (led X1 3.2 V ∥ diode X2 0.3 V reversed)) ∥ (battery X3 6 V r 10000 Ω reversed + ammeter X7 reversed)) + diode X6 0.7 V reversed; ammeter X9 broken @a–@a',
      'B0 6 V r 1 Ω + ((LED0 + led X2 1.6 V) ∥ (((diode X6 0.3 V reversed + (ammeter X1 ∥ diode X4 0.7 V)) ∥ diode X3 0.7 V reversed broken) + resistor X5 12 Ω)) + diode X7 0.3 V reversed',
    ];
    for (const line of [dead, leaking]) assert.equal(solved(line).faults[0]?.code, undefined);
  });

  it('settles: each curve carries what Kirchhoff’s laws send through it', () => {
    let settled = 0;
    fc.assert(
      fc.property(curvedCircuits, (circuit) => {
        const solution = solve(circuit);
        // Ideal meters and wires in a loop may leave a share undetermined, constant currents may have no way; nothing else may.
        if (solution.status === 'faulty') {
          assert.ok(
            solution.faults.every(({ code }) => code === 'share undetermined' || isConstant(code)),
            solution.faults[0]?.code,
          );
          return;
        }
        settled += 1;
        const currents = circuit.components.map(({ id }) => solution.current(id) ?? NaN);
        const largest = Math.max(...currents.map(Math.abs));
        for (const [place, component] of circuit.components.entries()) {
          const volts = solution.voltage(component.id);
          if (!hasCurve(component) || component.condition || volts === undefined) continue;
          const { current, slope } = curveOf(component)(volts);
          // What the last digit of the p.d. would change is no error of the current.
          const slack = 1e-12 * largest + 4e-15 * slope * Math.max(Math.abs(volts), 1);
          assert.ok(
            Math.abs((currents[place] ?? NaN) - current) <= slack,
            `${component.id}: ${currents[place]} and ${current}`,
          );
        }
        for (const node of new Set(circuit.components.flatMap(({ from, to }) => [from, to]))) {
          const sum = circuit.components.reduce((total, { id, kind, from, to, condition }, place) => {
            const outwards = (from === node ? 1 : 0) - (to === node ? 1 : 0);
            const wire = condition === 'bridged' ? (solution.current(`${id} bridge`) ?? 0) : 0;
            return (
              total +
              outwards * ((kind === 'supply' || kind === 'source' ? -1 : 1) * (currents[place] ?? NaN) + wire)
            );
          }, 0);
          assert.ok(Math.abs(sum) <= 1e-12 * largest, `node ${node}: ${sum} of ${largest}`);
        }
      }),
      { numRuns: 2000 },
    );
    assert.ok(settled > 1000, `${settled}`);
  });

  it('Lessons In Electric Circuits, Volume III (T. R. Kuphaldt), LED of 1.6 V at 20 mA from 24 V behind 1.12 kΩ: 20 mA', () => {
    near(solved('B1 24 V + R1 1.12 kΩ + LED1 1.6 V 20 mA').current('LED1'), 0.02, 1e-12);
  });

  it('a filament lamp at its rating takes its rating', () => {
    const lamp = solved('B1 6 V + L1 6 V 3 W filament');
    near(lamp.power('L1'), 3, 1e-12);
    near(lamp.resistance('L1'), 12, 1e-12);
    near(solved('B1 2.5 V + A1 + L1 2.5 V 0.3 A filament').current('A1'), 0.3, 1e-13);
  });

  it('two like lamps in series are each brighter than half as bright as Ohm’s law has it, for they are cooler (common practice)', () => {
    const both = solved('B1 6 V + L1 6 V 3 W filament + L2 6 V 3 W filament');
    const fixed = solved('B1 6 V + L1 6 V 3 W + L2 6 V 3 W');
    assert.ok((both.power('L1') ?? 0) > (fixed.power('L1') ?? 1));
    near(both.voltage('L1'), 3, 1e-12);
  });

  it('a constant current gives an LED and a filament lamp their rated p.d.s', () => {
    const both = solved('I1 20 mA + LED1 1.6 V 20 mA + L1 6 V 20 mA filament');
    near(both.voltage('LED1'), 1.6, 1e-12);
    near(both.voltage('L1'), 6, 1e-12);
    near(both.voltage('I1'), 7.6, 1e-12);
  });

  it('a constant current beside an LED behind a resistor is shared as the LED lets it', () => {
    const shared = solved('I1 30 mA + (R1 160 Ω ∥ LED1 1.6 V 20 mA)');
    near(shared.current('LED1'), 0.02, 1e-12);
    near(shared.current('R1'), 0.01, 1e-12);
  });

  it('an LED turned round leaves a constant current no path', () => {
    const { status, faults } = solved('I1 1 mA + R1 220 Ω + LED1 reversed');
    assert.equal(status, 'faulty');
    assert.deepEqual(
      faults.map(({ code, ids }) => [code, ids]),
      [['current without a path', ['I1', 'LED1']]],
    );
  });

  it('an LED turned round lets next to nothing through, and has the whole p.d.', () => {
    const turned = solved('B1 6 V + R1 220 Ω + LED1 reversed');
    assert.ok(Math.abs(turned.current('R1') ?? 1) < 1e-6);
    near(turned.voltage('LED1'), -6, 1e-6);
  });

  it('diodes one against the other, side by side, in a bridge and behind each other all settle', () => {
    const lines = [
      'B1 6 V + R1 100 Ω + D1 + D2 reversed',
      'B1 6 V + R1 100 Ω + (D1 ∥ D2 reversed)',
      'B1 6 V + R1 100 Ω + LED1 + LED2 + D1 + D2',
      'B1 9 V + ((D1 reversed + @p + D2) ∥ (D3 + @q + D4 reversed)); L1 6 V 3 W filament @q–@p',
      'B1 1000000 V r 0.000001 Ω + D1',
      'B1 -24 V + D1',
      'B1 6 V + S1 open + D1',
      'B1 6 V + D1 broken + R1 5 Ω',
      'B1 6 V + D1 bridged + R1 5 Ω',
    ];
    for (const line of lines) assert.equal(solved(line).status, 'solved', line);
    near(solved(lines[8] ?? '').current('R1'), 1.2, 1e-12);
    assert.equal(solved(lines[7] ?? '').current('R1'), 0);
  });

  it('of which the supply alone counts in the totals', () => {
    const led = solved('B1 5 V + R1 150 Ω + LED1 2 V 20 mA');
    near(led.totalCurrent(), 0.02, 1e-12);
    near(led.totalResistance(), 250, 1e-8);
    near(led.quantity('P_total'), 0.1, 1e-12);
    near(led.quantity('P_dissipated'), 0.1, 1e-12);
    assert.deepEqual(led.faults, []);
  });

  it('has no exact readings, and none without a supply', () => {
    const exact = solveExact(parseCircuit('B1 5 V + R1 150 Ω + LED1'));
    assert.deepEqual(
      exact.faults.map(({ code, ids }) => [code, ...ids]),
      [['not ohmic', 'LED1']],
    );
    assert.equal(solved('R1 150 Ω + LED1').faults[0]?.code, 'not ohmic');
  });

  it('is followed while a slider moves', () => {
    const circuit = parseCircuit('B1 5 V + R1 [100..1000] 150 Ω + (LED1 ∥ L1 6 V 3 W filament)');
    const tracker = track(circuit, 'R1', ['I_R1', 'V_LED1', 'R_total', 'P_L1']);
    const out = new Float64Array(4);
    for (const ohms of [100, 430, 1000]) {
      assert.ok(tracker.at(ohms, out));
      const wanted = solve(withValue(circuit, 'R1', ohms));
      for (const [place, name] of ['I_R1', 'V_LED1', 'R_total', 'P_L1'].entries())
        near(out[place], wanted.quantity(name) ?? NaN, 1e-12);
      near(tracker.solution(ohms).current('R1'), wanted.current('R1') ?? NaN, 1e-12);
    }
  });
});
