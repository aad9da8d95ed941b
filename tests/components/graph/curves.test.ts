import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { circuitAt, curvesOf, isLogarithmic } from '../../../src/components/graph/curves.ts';
import { turnedOf, type Turned } from '../../../src/components/graph/turned.ts';
import { Fraction, parseCircuit, solveExact, type Circuit } from '../../../src/engine/index.ts';
import { pump, quay } from './bench.ts';

const turnedIn = (circuit: Circuit, against = ''): Turned => {
  const turned = turnedOf(circuit, circuit, against);
  if ('code' in turned) throw new Error(turned.code);
  return turned;
};

const ohms = fc.integer({ min: 1, max: 99 });

describe('the curves of a graph', () => {
  it('are the exact readings at every setting, whatever is turned', () => {
    const against = fc.constantFrom('R1', 'B1', 'r_B1');
    fc.assert(
      fc.property(ohms, ohms, ohms, against, fc.nat({ max: 180 }), (a, b, c, what, place) => {
        const circuit = parseCircuit(
          `B1 [0..20 step 1] 6 V r [0..5 step 0.1] ${c % 5} Ω + R1 [1..99 step 1] ${a} Ω + (R2 ${b} Ω ∥ A1 ${c} Ω)`,
        );
        const turned = turnedIn(circuit, what);
        const names = ['I_R1', 'I_R2', 'I_A1'];
        const { settings, curves } = curvesOf(circuit, turned, names);
        const at = settings[place]!;
        const free = circuit.components.map((each) =>
          each.kind === 'resistor' || each.kind === 'supply'
            ? { ...each, range: undefined, internalRange: undefined }
            : each,
        );
        const there = circuitAt({ ...circuit, components: free as never }, turned, new Fraction(at));
        const solution = solveExact(there);
        for (const { name, values } of curves) {
          const exact = solution.quantity(name)!.valueOf();
          expect(values[place]).to.be.closeTo(exact, Math.max(Math.abs(exact), 1e-9) * 1e-9);
        }
      }),
    );
  });

  it('begin and end where the slider does', () => {
    const { settings } = curvesOf(parseCircuit(quay), turnedIn(parseCircuit(quay)), ['I_A1']);
    expect([settings[0], settings.at(-1)]).to.deep.equal([4, 40]);
  });

  it('have no value where the quantity has none: nothing limits the current at 0 Ω', () => {
    const circuit = parseCircuit('B1 6 V + R1 [0..20] 5 Ω');
    const { curves } = curvesOf(circuit, turnedIn(circuit), ['I_R1']);
    expect(curves[0]?.values[0]).to.equal(undefined);
    expect(curves[0]?.values[1]).to.be.above(0);
  });

  it('that always flow the other way are drawn as large as they are, those that turn round with their sign', () => {
    const against = parseCircuit('B1 6 V + R1 [1..20] 5 Ω reversed');
    const [back] = curvesOf(against, turnedIn(against), ['I_R1']).curves;
    expect([back?.sign, Math.min(...(back?.values ?? []).map((value = 0) => value)) >= 0]).to.deep.equal([
      -1,
      true,
    ]);
    const bridge = parseCircuit(
      'B1 6 V + ((R1 [1..20] 5 Ω + @p + R2 10 Ω) ∥ (R3 10 Ω + @q + R4 10 Ω)); A1 5 Ω @p–@q',
    );
    const [both] = curvesOf(bridge, turnedIn(bridge), ['I_A1']).curves;
    const values = (both?.values ?? []).map((value = 0) => value);
    expect(Math.min(...values)).to.be.below(0);
    expect(Math.max(...values)).to.be.above(0);
  });

  it('have their summit where theory has it: most power at the resistance that is inside the battery (Jacobi 1840)', () => {
    const circuit = parseCircuit(pump);
    const { settings, curves } = curvesOf(circuit, turnedIn(circuit), ['P_R1']);
    const values = (curves[0]?.values ?? []).map((value = 0) => value);
    const top = Math.max(...values);
    expect(settings[values.indexOf(top)]).to.be.closeTo(2, 20 / 180);
    expect(top).to.be.closeTo(18, 0.02);
  });

  it('go evenly in ratio where the slider does, over more than one power of ten', () => {
    const wide = turnedIn(parseCircuit('B1 6 V + R1 [10..10000 log] 1000 Ω'));
    const narrow = turnedIn(parseCircuit('B1 6 V + R1 [100..1000 log] 316 Ω'));
    expect([isLogarithmic(wide), isLogarithmic(narrow)]).to.deep.equal([true, false]);
    const { settings } = curvesOf(parseCircuit('B1 6 V + R1 [10..10000 log] 1000 Ω'), wide, ['I_R1']);
    const ratios = settings.slice(1).map((setting, place) => setting / settings[place]!);
    for (const ratio of ratios) expect(ratio).to.be.closeTo(1000 ** (1 / 180), 1e-9);
  });
});
