import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { bridges, resistanceOf, type Circuit, type Component } from '../../../src/engine/circuit/index.ts';
import { Fraction, quantity } from '../../../src/engine/quantity/index.ts';
import { quantities, solve, solveExact, type Readings } from '../../../src/engine/solve/index.ts';
import { say } from '../../../src/engine/words/index.ts';
import { read } from './agreement.ts';
import { ammeters } from './ammeter-table.ts';
import { constantCurrents } from './constant-current-table.ts';
import { rows as table } from './fault-table.ts';
import { anyCircuit, numRuns } from './random-circuit.ts';
import { short } from './short.ts';

const rows = [...table, ...ammeters, ...constantCurrents];

/** Codes with their ids, as in the table. */
const listed = (found: readonly { code: string; ids: readonly string[] }[]): string[] =>
  found.map(({ code, ids }) => `${code}: ${ids.join(' ')}`.trim());

describe('faults, remarks and cautions', () => {
  for (const { what, circuit, faults = [], remarks = [], cautions = [], readings = {} } of rows) {
    it(what, () => {
      const drawn = short(circuit);
      const exact = solveExact(drawn);
      for (const solution of [exact, solve(drawn)] as readonly Readings<number | Fraction>[]) {
        assert.deepEqual(listed(solution.faults), faults);
        assert.deepEqual(listed(solution.remarks), remarks);
        assert.deepEqual(listed(solution.cautions), cautions);
        assert.equal(solution.status, faults.length > 0 ? 'faulty' : 'solved');
      }
      for (const [name, value] of Object.entries(readings)) {
        assert.equal(read(exact, name).toFraction(), value, name);
        assert.ok(Math.abs(read(solve(drawn), name) - Number(new Fraction(value))) < 1e-15, name);
      }
    });
  }

  it('are sentences that name every component concerned', () => {
    for (const { circuit } of rows) {
      const { faults, remarks, cautions } = solve(short(circuit));
      for (const found of [...faults, ...remarks, ...cautions]) {
        const sentence = say(found);
        assert.match(sentence, /^[A-Z“].*[.]$/s);
        const named = { supplies: found.ids, ids: found.ids, ...found.data };
        for (const id of found.code === 'not extra-low voltage' ? [] : named.supplies)
          assert.ok(sentence.includes(id), `${id}: ${sentence}`);
      }
    }
  });

  it('a faulty circuit has no readings, live or exact, and says so', () => {
    for (const { circuit, faults } of rows) {
      if (!faults) continue;
      const drawn = short(circuit);
      for (const solution of [solve(drawn), solveExact(drawn)])
        for (const name of quantities(drawn).filter((one) => /^([IVP]_|R_total|R_loop|P)/.test(one))) {
          assert.equal(solution.quantity(name), undefined);
          assert.equal(solution.reason(name)?.code, 'circuit has a fault');
        }
    }
  });
});

describe('an ammeter across something', () => {
  it('leaves it no current, where it is ideal, and is where the current goes', () => {
    let [seen, fed] = [0, 0];
    fc.assert(
      fc.property(anyCircuit, (circuit) => {
        const solution = solveExact(circuit);
        for (const { code, data } of solution.remarks) {
          if (code !== 'ammeter across') continue;
          const { meters, others, ideal } = data;
          for (const id of ideal ? others : []) assert.equal(Number(solution.current(id)), 0, id);
          for (const id of meters)
            assert.equal(circuit.components.find((one) => one.id === id)?.kind, 'ammeter');
          seen++;
          if (meters.some((id) => solution.current(id)?.n)) fed++;
        }
      }),
      { numRuns },
    );
    assert.ok(seen > 20 && fed > 10, `${seen}, ${fed}`);
  });
});

describe('the faults of random circuits', () => {
  const few = new Fraction(1, 10 ** 12);

  /**
   * Other small resistances that have nothing in common (drawn by Park and Miller's generator, 1988). Resistances by any rule may chance
   * to share a current as equal ones do: of three in a ring that are as 1, 25 and 49 the middle one has a third of the whole.
   */
  const uneven: Fraction[] = [];
  for (let draw = 1; uneven.length < 40; uneven.push(few.mul(draw).div(10 ** 9)))
    draw = (draw * 48271) % (2 ** 31 - 1);

  /**
   * The circuit with some small resistance in everything that has none, and with supplies of large resistances that would drive the
   * constant currents through a wire in the place of what drives them.
   */
  function real(circuit: Circuit, size: (k: number) => Fraction): Circuit {
    const components = bridges(circuit).components.map((component, k): Component => {
      if (component.kind === 'source') {
        const { current, ...rest } = component;
        const large = size(k).inverse();
        // No two of them are quite as they should be.
        const emf = quantity(current.value.mul(large).add(1), 'V');
        const inside = quantity(large, 'Ω');
        return { ...rest, kind: 'supply', emf, internalResistance: inside };
      }
      const ohms = resistanceOf(component);
      if (ohms?.n !== 0n) return component;
      const resistance = quantity(size(k), 'Ω');
      if (component.kind === 'supply') return { ...component, internalResistance: resistance };
      const { id, from, to } = component;
      return { id, from, to, kind: 'resistor', resistance };
    });
    return { components };
  }

  it('are just those whose currents and p.d.s small or large resistances would decide', () => {
    const seen = { solved: 0, faulty: 0 };
    fc.assert(
      fc.property(anyCircuit, (circuit) => {
        const solution = solveExact(circuit);
        seen[solution.status]++;
        assert.equal(solve(circuit).status, solution.status);
        const even = solveExact(real(circuit, () => few));
        const other = solveExact(real(circuit, (k) => uneven[k] ?? few));
        const apart = bridges(circuit).components.flatMap((component) => {
          const { id, kind, condition } = component;
          const [one, two] = [Number(even.current(id)), Number(other.current(id))];
          if (solution.status === 'solved') assert.ok(Math.abs(one - Number(solution.current(id))) < 1e-6);
          if (kind !== 'source' || condition === 'broken') return Math.abs(one - two);
          // A constant current is as given, and what the large resistances are decides no p.d. either.
          const volts = [even, other].map((each) => Number(each.voltage(id)));
          return [
            Math.abs(one - Number(component.current.value)),
            Math.abs((volts[0] ?? 0) - (volts[1] ?? 0)),
          ];
        });
        assert.equal(solution.status, Math.max(...apart) > 1e-6 ? 'faulty' : 'solved');
      }),
      { numRuns },
    );
    assert.ok(seen.faulty > numRuns / 20 && seen.solved > numRuns / 3, JSON.stringify(seen));
  });
});
