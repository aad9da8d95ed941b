import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  Fraction,
  maximumPower,
  overTime,
  parseCircuit,
  solveExact,
  thevenin,
} from '../../../src/engine/index.ts';

const ohms = fc.integer({ min: 1, max: 60 });
const volts = fc.integer({ min: -12, max: 12 });

/** Two batteries and a ladder between p and q, with something more between them or nothing. */
const ladder = (e: number, f: number, [a, b, c, d]: readonly number[], more = ''): string =>
  `B1 ${e} V r 1 Ω @p–@n; R1 ${a} Ω @p–@m; R2 ${b} Ω @m–@n; B2 ${f} V r 2 Ω @m–@k; R3 ${c} Ω @k–@n; R4 ${d} Ω @k–@q${more}`;

describe('what a circuit is like from two of its nodes', () => {
  // Conventional current leaves a supply that stands from p to q at q.
  it('two of them in a row, or side by side, are as their batteries would be', () => {
    fc.assert(
      fc.property(volts, ohms, volts, ohms, (e, r, f, s) => {
        const row = thevenin(
          parseCircuit(`B1 ${e} V r ${r} Ω @p–@m; B2 ${f} V r ${s} Ω @m–@q; V1 @p–@q`),
          'q',
          'p',
        );
        assert.deepEqual([row?.emf.toFraction(), row?.resistance.toFraction()], [`${e + f}`, `${r + s}`]);
        const side = thevenin(parseCircuit(`B1 ${e} V r ${r} Ω @p–@q; B2 ${f} V r ${s} Ω @p–@q`), 'q', 'p');
        // J. Millman 1940: the conductances weigh the e.m.f.s.
        const emf = new Fraction(e * s + f * r, r + s);
        assert.deepEqual(
          [side?.emf.toFraction(), side?.resistance.toFraction()],
          [emf.toFraction(), new Fraction(r * s, r + s).toFraction()],
        );
      }),
    );
  });

  it('turned round it drives the other way, with the same resistance', () => {
    fc.assert(
      fc.property(volts, volts, fc.tuple(ohms, ohms, ohms, ohms), (e, f, all) => {
        const circuit = parseCircuit(`${ladder(e, f, all)}; V1 @p–@q`);
        const [one, other] = [thevenin(circuit, 'p', 'q'), thevenin(circuit, 'q', 'p')];
        assert.equal(one?.emf.toFraction(), other?.emf.neg().toFraction());
        assert.equal(one?.resistance.toFraction(), other?.resistance.toFraction());
      }),
    );
  });

  it('of a load: any other in its place has E/(R + r)', () => {
    fc.assert(
      fc.property(volts, volts, fc.tuple(ohms, ohms, ohms, ohms), ohms, (e, f, all, load) => {
        const seen = thevenin(parseCircuit(`${ladder(e, f, all)}; V1 @p–@q`), 'p', 'q');
        assert.ok(seen);
        const current = solveExact(parseCircuit(ladder(e, f, all, `; R5 ${load} Ω @p–@q`))).current('R5');
        assert.equal(current?.toFraction(), seen.emf.div(seen.resistance.add(load)).toFraction());
      }),
    );
  });

  it('is none where nothing joins the nodes, or where the circuit has a fault', () => {
    const apart = parseCircuit('B1 6 V @a–@b; R1 2 Ω @a–@b; R2 3 Ω @p–@q; R3 1 Ω @p–@q');
    assert.equal(thevenin(apart, 'a', 'p'), undefined);
    assert.equal(thevenin(parseCircuit('B1 6 V @a–@b; B2 3 V @a–@b; R1 1 Ω @a–@b'), 'a', 'b'), undefined);
  });
});

describe('the load that takes most power', () => {
  it('takes more than its neighbours on either side, at the resistance that the rest has (M. H. von Jacobi 1840)', () => {
    fc.assert(
      fc.property(volts.filter(Boolean), volts, fc.tuple(ohms, ohms, ohms, ohms), ohms, (e, f, all, load) => {
        const line = (value: string): string => ladder(e, f, all, `; R5 ${value} Ω @p–@q`);
        const best = maximumPower(parseCircuit(line(`${load}`)), 'R5');
        if (!best) return;
        const power = (value: Fraction): Fraction => {
          const circuit = parseCircuit(line('1'));
          const components = circuit.components.map((each) =>
            each.id === 'R5' && each.kind === 'resistor'
              ? { ...each, resistance: { ...each.resistance, value } }
              : each,
          );
          return solveExact({ ...circuit, components }).power('R5') ?? new Fraction(-1);
        };
        assert.equal(power(best.resistance).toFraction(), best.power.toFraction());
        for (const share of ['9/10', '99/100', '101/100', '3/2', '1/50', '50'])
          assert.ok(power(best.resistance.mul(share)).compare(best.power) < 0, share);
      }),
    );
  });

  it('is none where the rest drives nothing, or has no resistance of its own', () => {
    for (const line of ['B1 0 V r 2 Ω + R1 3 Ω', 'B1 6 V + R1 3 Ω', 'B1 6 V + A1 + R1 3 Ω'])
      assert.equal(maximumPower(parseCircuit(line), 'R1'), undefined, line);
  });

  it('is refused, as is a node or what lasts, where there is none of that name, with what was probably meant', () => {
    const circuit = parseCircuit('B1 6 V r 1 Ω + @P + R1 3 Ω + @Q + R2 5 Ω');
    const message = 'There is no R9 in this circuit; did you mean R1?';
    assert.throws(() => maximumPower(circuit, 'R9'), { name: 'RangeError', message });
    assert.throws(() => overTime(circuit, 'R9', 60), { name: 'RangeError', message });
    for (const [p, q] of [
      ['Q', 'p'],
      ['p', 'Q'],
    ] as const)
      assert.throws(() => thevenin(circuit, p, q), {
        name: 'RangeError',
        message: 'There is no p in this circuit; did you mean P?',
      });
  });

  it('of no number of seconds is refused', () => {
    for (const seconds of [NaN, Infinity])
      assert.throws(() => overTime(parseCircuit('B1 6 V + R1 4 Ω'), 'R1', seconds), {
        name: 'RangeError',
        message: `"${seconds}" is not a number that can be read; write 4.7 or 1/3.`,
      });
  });
});

describe('a circuit in which something does not obey Ohm’s law', () => {
  const message = 'D1 does not obey Ohm’s law: there is no one resistance, and no exact fraction, to give.';

  it('is like no one supply, and says why', () => {
    const line = 'B1 6 V + @p + R1 4 Ω + @q + D1 + R2 3 Ω; V1 @p–@q';
    assert.throws(() => thevenin(parseCircuit(line), 'p', 'q'), { name: 'RangeError', message });
    assert.throws(() => maximumPower(parseCircuit(line), 'R2'), { name: 'RangeError', message });
  });

  it('has a load that takes most power where the load itself is that something', () => {
    const best = maximumPower(parseCircuit('B1 6 V r 1 Ω + R1 2 Ω + D1'), 'D1');
    assert.deepEqual([best?.resistance.toFraction(), best?.power.toFraction()], ['3', '3']);
  });
});

describe('what passes in a time', () => {
  /** Worked by hand: what, for how long, and then coulombs, joules and kilowatt-hours. */
  const cases: readonly (readonly [line: string, id: string, seconds: number, ...wanted: string[]])[] = [
    // 2 A for a minute; 12 V · 2 A · 60 s.
    ['B1 12 V + R1 6 Ω', 'R1', 60, '120', '1440', '1/2500'],
    // A 2 kW heater for three hours is 6 kWh.
    ['B1 230 V + H1 230 V 2000 W', 'H1', 10_800, '2160000/23', '21600000', '6'],
    // A lamp of 6 W for 5 hours is 0.03 kWh.
    ['B1 12 V + L1 12 V 6 W', 'L1', 18_000, '9000', '108000', '3/100'],
    // A battery that is charged takes in: 1 A backwards through 6 V.
    ['B1 9 V + R1 3 Ω + B2 6 V reversed', 'B2', 10, '10', '-60', '-1/60000'],
    ['B1 6 V + S1 open + R1 3 Ω', 'R1', 1000, '0', '0', '0'],
    ['B1 6 V + R1 3 Ω', 'R1', 0, '0', '0', '0'],
  ];
  for (const [line, id, seconds, charge, energy, kilowattHours] of cases)
    it(`${line}: ${id} for ${seconds} s`, () => {
      const found = overTime(parseCircuit(line), id, seconds);
      assert.deepEqual(
        [found?.charge.abs().toFraction(), found?.energy.toFraction(), found?.kilowattHours.toFraction()],
        [charge, energy, kilowattHours],
      );
    });

  it('is twice as much in twice the time, and the parts give what the supply delivers', () => {
    fc.assert(
      fc.property(ohms, ohms, ohms, fc.integer({ min: 1, max: 9999 }), (a, b, c, seconds) => {
        const circuit = parseCircuit(`B1 6 V r 1 Ω + R1 ${a} Ω + (R2 ${b} Ω ∥ R3 ${c} Ω)`);
        const energy = (id: string, time: number): Fraction =>
          overTime(circuit, id, time)?.energy ?? new Fraction(-1);
        assert.equal(energy('R1', 2 * seconds).toFraction(), energy('R1', seconds).mul(2).toFraction());
        const taken = ['R1', 'R2', 'R3'].reduce((sum, id) => sum.add(energy(id, seconds)), new Fraction(0));
        assert.equal(taken.toFraction(), energy('B1', seconds).toFraction());
      }),
    );
  });
});
