import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  bridges,
  isSupply,
  resistanceOf,
  type Circuit,
  type Component,
} from '../../../src/engine/circuit/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { quantities, solve, solveExact, type ExactSolution } from '../../../src/engine/solve/index.ts';
import { disagreement } from './agreement.ts';
import { anyCircuit, numRuns, spreadCircuit } from './random-circuit.ts';
import { short } from './short.ts';

const zero = new Fraction(0);
const sum = (terms: readonly (Fraction | undefined)[]): Fraction =>
  terms.reduce<Fraction>((total, term) => total.add(term ?? NaN), zero);

/** Tries a law on random circuits that have an answer. */
function always(law: (circuit: Circuit, solution: ExactSolution) => void): void {
  fc.assert(
    fc.property(anyCircuit, (circuit) => {
      const solution = solveExact(circuit);
      fc.pre(solution.status === 'solved');
      law(circuit, solution);
    }),
    { numRuns: 2 * numRuns, maxSkipsPerRun: 1000 },
  );
}

/** The current that a component brings to a node, as reported. */
function brought(component: Component, node: string, solution: ExactSolution): Fraction {
  const { id, from, to } = component;
  const current = solution.current(id) ?? zero;
  // What a supply delivers comes out of its `from`; through anything else the current leaves `from`.
  const [onwards, back] = isSupply(component) ? [from, to] : [to, from];
  return sum([node === onwards ? current : zero, node === back ? current.neg() : zero]);
}

describe('Kirchhoff’s laws and Ohm’s, from the readings reported', () => {
  it('the currents into every node sum to 0', () => {
    always((circuit, solution) => {
      const { components } = bridges(circuit);
      for (const node of new Set(components.flatMap(({ from, to }) => [from, to])))
        assert.ok(sum(components.map((part) => brought(part, node, solution))).equals(0));
    });
  });

  it('the p.d.s round every loop sum to 0', () => {
    always(({ components }, solution) => {
      const potentials = new Map<string, Fraction>();
      const climb = (node: string, potential: Fraction): void => {
        const known = potentials.get(node);
        if (known) {
          assert.ok(known.equals(potential));
          return;
        }
        potentials.set(node, potential);
        for (const { id, from, to } of components) {
          const volts = solution.voltage(id);
          if (volts && from === node) climb(to, potential.sub(volts));
          if (volts && to === node) climb(from, potential.add(volts));
        }
      };
      for (const { from } of components) if (!potentials.has(from)) climb(from, zero);
    });
  });

  it('the p.d. is I R across what conducts and E − I r across a supply; a constant current is as given; nothing flows where nothing conducts', () => {
    always(({ components }, solution) => {
      for (const component of components) {
        const [current, volts] = [solution.current(component.id), solution.voltage(component.id)];
        const ohms = resistanceOf(component);
        if (component.kind === 'source') {
          const given = component.condition === 'broken' ? zero : component.current.value;
          assert.ok(current?.equals(given));
          assert.ok(volts !== undefined || given.n === 0n);
        } else if (!ohms) assert.ok(current?.equals(0));
        else if (component.kind !== 'supply') assert.ok(volts?.equals(ohms.mul(current ?? NaN)));
        else assert.ok(volts?.equals(component.emf.value.sub(ohms.mul(current ?? NaN))));
      }
    });
  });

  it('a p.d. is the difference of two potentials, and the first supply’s negative terminal is at 0 V', () => {
    always(({ components }, solution) => {
      const ground = components.find(isSupply);
      assert.ok(solution.potential(ground?.to ?? '')?.equals(0));
      for (const { id, from, to } of components) {
        const [p, q] = [solution.potential(from), solution.potential(to)];
        if (!p || !q) continue;
        assert.ok(solution.voltage(id)?.equals(p.sub(q)));
        assert.ok(solution.quantity(`V_${from}_${to}`)?.equals(p.sub(q)));
      }
    });
  });

  it('what the supplies give is what everything else takes', () => {
    always(({ components }, solution) => {
      const power = (gives: boolean): Fraction =>
        sum(components.filter((each) => isSupply(each) === gives).map(({ id }) => solution.power(id)));
      assert.ok(power(true).equals(power(false)));
      assert.ok(solution.quantity('P_total')?.equals(solution.quantity('P_dissipated') ?? NaN));
      for (const { id, kind } of components) {
        if (kind === 'source') continue;
        if (kind !== 'supply') assert.ok(solution.power(id)?.compare(0) !== -1, `${id} takes power`);
        else {
          const [whole, inside] = [solution.quantity(`Pemf_${id}`), solution.quantity(`Pr_${id}`)];
          assert.ok(solution.power(id)?.equals(whole?.sub(inside ?? NaN) ?? NaN));
        }
      }
    });
  });

  it('the total resistance is the terminal p.d. of the one supply over its current', () => {
    always(({ components }, solution) => {
      const supplies = components.filter(isSupply);
      const [{ id, kind } = { id: '', kind: '' }] = supplies;
      const current = solution.current(id) ?? zero;
      if (supplies.length > 1 || current.equals(0)) return;
      assert.ok(solution.totalResistance()?.equals(solution.voltage(id)?.div(current) ?? NaN));
      if (kind === 'supply')
        assert.ok(solution.quantity('R_loop')?.equals(solution.quantity(`E_${id}`)?.div(current) ?? NaN));
      assert.ok(solution.totalCurrent()?.equals(current));
    });
  });
});

describe('live readings', () => {
  it('are within 1e-15 of the largest exact reading of their kind, and have a value where that has', () => {
    fc.assert(
      fc.property(anyCircuit, (circuit) => assert.ok(disagreement(circuit, quantities(circuit)) <= 1e-15)),
      { numRuns: 2 * numRuns },
    );
  });

  it('stay so when resistances are spread over a factor of more than 10¹⁰', () => {
    fc.assert(
      fc.property(spreadCircuit, (circuit) => assert.ok(disagreement(circuit, quantities(circuit)) <= 1e-15)),
      { numRuns },
    );
  });

  it('are 0, not nearly 0, just where the exact current or p.d. is 0', () => {
    fc.assert(
      fc.property(fc.oneof(anyCircuit, spreadCircuit), (circuit) => {
        const [live, exact] = [solve(circuit), solveExact(circuit)];
        for (const name of quantities(circuit).filter((one) => /^[IV]_/.test(one)))
          assert.equal(live.quantity(name) === 0, exact.quantity(name)?.equals(0) ?? false, name);
      }),
      { numRuns },
    );
  });

  it('of two equal supplies that drive each other are 0 p.d. and no less than their current', () => {
    const solution = solve(short('B1 b a 1 10; B2 a b 1 10; R1 a b 1/3; R2 b a 10/3'));
    assert.equal(solution.voltage('B1'), 0);
    assert.equal(solution.current('R1'), 0);
    assert.equal(solution.current('B2'), 0.1);
  });

  it('of any balanced bridge are 0 in its middle', () => {
    const ohms = fc.integer({ min: 1, max: 9999 });
    fc.assert(
      fc.property(ohms, ohms, ohms, ohms, ohms, (a, b, k, middle, inside) => {
        const bridge = short(
          `B1 a g 9.7 ${inside}/100; R1 a b ${a}/1000; R2 b g ${b}/1000; R3 a c ${a * k}/700; R4 c g ${b * k}/700; ` +
            `R5 b c ${middle}/10; R6 a h 68; R7 h g 33`,
        );
        assert.equal(solve(bridge).current('R5'), 0);
        assert.equal(solve(bridge).voltage('R5'), 0);
      }),
      { numRuns },
    );
  });
});
