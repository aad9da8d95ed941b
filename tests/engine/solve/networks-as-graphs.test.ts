import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { circuit, plainParts, positive, type Part } from './random-circuit.ts';
import {
  between,
  exact,
  merged,
  networks,
  nodesOf,
  ohmsOf,
  one,
  part,
  passive,
  proper,
  total,
  trees,
  unitFlow,
} from './resistor-network.ts';

const numRuns = 1000;

describe('a network of resistors', () => {
  it('cut law: across any cut flows the main current if it parts the terminals, else nothing', () => {
    fc.assert(
      fc.property(networks, fc.nat(), (list, mask) => {
        const flow = unitFlow(list, 'a', 'b');
        const inside = (node: string): boolean => ((mask >> (node.charCodeAt(0) % 16)) & 1) === 1;
        const net = total(
          list.map((each) => {
            const across = Number(inside(each.from)) - Number(inside(each.to));
            return flow.current(each).mul(across);
          }),
        );
        assert.ok(net.equals(Number(inside('a')) - Number(inside('b'))));
      }),
      { numRuns },
    );
  });

  it('a star of any number of arms is a mesh of RᵢRⱼ Σ 1/R (Rosen 1924; from memory)', () => {
    fc.assert(
      fc.property(networks, fc.array(positive, { minLength: 3, maxLength: 5 }), (list, arms) => {
        const nodes = nodesOf(list).slice(0, arms.length);
        const ohms = arms.slice(0, nodes.length).map((each) => new Fraction(each));
        const all = total(ohms.map((each) => one.div(each)));
        const star = nodes.map((node, k) => part(`R9${k}`, node, 'z', ohms[k] ?? one));
        const mesh = nodes.flatMap((p, i) =>
          nodes
            .slice(i + 1)
            .map((q, j) => part(`R8${i}${j}`, p, q, (ohms[i] ?? one).mul(ohms[i + 1 + j] ?? one).mul(all))),
        );
        assert.ok(between([...list, ...star], 'a', 'b').equals(between([...list, ...mesh], 'a', 'b')));
      }),
      { numRuns },
    );
  });

  it('sensitivity: h more ohms in a branch of current i raise r by h i²/(1 + h(1 − p)/R), p its share of the trees (Cohn 1950; from memory)', () => {
    fc.assert(
      fc.property(networks, fc.nat(), positive, (list, place, more) => {
        const own = proper(list)[place % proper(list).length];
        fc.pre(own !== undefined);
        const [ohms, h] = [ohmsOf(own), new Fraction(more)];
        const current = unitFlow(list, 'a', 'b').current(own);
        const share = between(list, own.from, own.to).div(ohms);
        const raised = list.map((each) =>
          each === own ? part(own.id, own.from, own.to, ohms.add(h)) : each,
        );
        const rise = h
          .mul(current)
          .mul(current)
          .div(one.add(h.mul(one.sub(share)).div(ohms)));
        assert.ok(
          between(raised, 'a', 'b')
            .sub(between(list, 'a', 'b'))
            .equals(rise),
        );
        assert.equal(rise.n === 0n, current.n === 0n);
      }),
      { numRuns },
    );
  });

  it('superadditivity: r(R + R′) is at least r(R) + r(R′) (Shannon and Hagelbarger 1956)', () => {
    fc.assert(
      fc.property(networks, fc.array(positive, { minLength: 20, maxLength: 20 }), (list, more) => {
        const other = list.map((each, k) => part(each.id, each.from, each.to, new Fraction(more[k] ?? '1')));
        const both = list.map((each, k) =>
          part(each.id, each.from, each.to, ohmsOf(each).add(new Fraction(more[k] ?? '1'))),
        );
        const apart = between(list, 'a', 'b').add(between(other, 'a', 'b'));
        assert.ok(between(both, 'a', 'b').compare(apart) >= 0);
      }),
      { numRuns },
    );
  });

  it('no Braess: a branch more never lowers the main current between fixed potentials', () => {
    fc.assert(
      fc.property(networks, positive, fc.nat(), fc.nat(), (list, ohms, p, q) => {
        const nodes = nodesOf(list);
        const added = part(
          'R99',
          nodes[p % nodes.length] ?? 'a',
          nodes[q % nodes.length] ?? 'b',
          new Fraction(ohms),
        );
        assert.ok(between([...list, added], 'a', 'b').compare(between(list, 'a', 'b')) <= 0);
      }),
      { numRuns },
    );
  });

  it('bounds: never less than all side by side, never more than all in a chain', () => {
    fc.assert(
      fc.property(networks, (list) => {
        const ohms = list.map(ohmsOf);
        const r = between(list, 'a', 'b');
        assert.ok(r.compare(total(ohms)) <= 0);
        assert.ok(r.compare(one.div(total(ohms.map((each) => one.div(each))))) >= 0);
      }),
      { numRuns },
    );
  });

  it('Thomson: no other flow of 1 A takes less power, and the true one takes r; Dirichlet: no other potentials do', () => {
    fc.assert(
      fc.property(networks, fc.array(positive, { minLength: 20, maxLength: 20 }), (list, others) => {
        const rival = list.map((each, k) =>
          part(each.id, each.from, each.to, new Fraction(others[k] ?? '1')),
        );
        const [own, other] = [unitFlow(list, 'a', 'b'), unitFlow(rival, 'a', 'b')];
        const power = (flow: typeof own): Fraction =>
          total(list.map((each) => flow.current(each).mul(flow.current(each)).mul(ohmsOf(each))));
        const r = between(list, 'a', 'b');
        assert.ok(power(own).equals(r) && power(other).compare(r) >= 0);
        // Potentials of the rival, stretched to the same p.d. between the terminals.
        const stretch = r.div(other.potential('a'));
        const heat = total(
          list.map((each) => {
            const drop = other.potential(each.from).sub(other.potential(each.to)).mul(stretch);
            return drop.mul(drop).div(ohmsOf(each));
          }),
        );
        assert.ok(heat.compare(r) >= 0);
      }),
      { numRuns },
    );
  });

  it('reciprocity of p.d.s: 1 A from s to t gives between u and w what 1 A from u to w gives between s and t', () => {
    fc.assert(
      fc.property(networks, fc.nat(), fc.nat(), (list, p, q) => {
        const nodes = nodesOf(list);
        const [u, w] = [nodes[p % nodes.length] ?? 'a', nodes[q % nodes.length] ?? 'b'];
        fc.pre(u !== w);
        const [there, back] = [unitFlow(list, 'a', 'b'), unitFlow(list, u, w)];
        const drop = (flow: typeof there, x: string, y: string): Fraction =>
          flow.potential(x).sub(flow.potential(y));
        assert.ok(drop(there, u, w).equals(drop(back, 'a', 'b')));
      }),
      { numRuns },
    );
  });

  it('matrix–tree: r(s,t) is the trees with s and t made one over all trees, and r/R the share of the trees with the branch (Kirchhoff 1847)', () => {
    fc.assert(
      fc.property(networks, (all) => {
        const list = proper(all).slice(0, 7);
        const nodes = nodesOf(list);
        const whole = trees(list, nodes.length);
        fc.pre(whole.n !== 0n && nodes.includes('a') && nodes.includes('b'));
        const joined = merged(list, 'a', 'b');
        assert.ok(
          trees(joined, nodes.length - 1)
            .div(whole)
            .equals(between(list, 'a', 'b')),
        );
        for (const own of list) {
          const without = trees(
            list.filter((each) => each !== own),
            nodes.length,
          );
          const share = whole.sub(without).div(whole);
          assert.ok(between(list, own.from, own.to).div(ohmsOf(own)).equals(share), own.id);
        }
      }),
      { numRuns },
    );
  });
});

describe('a network with supplies', () => {
  it('substitution: a branch in the place of one with its p.d. at its current changes nothing', () => {
    fc.assert(
      fc.property(plainParts, fc.nat(), positive, (list, place, ohms) => {
        const resistors = list.filter(({ kind }) => kind === 'resistor');
        const own = resistors[place % resistors.length];
        fc.pre(own !== undefined);
        const before = solveExact(circuit(list));
        const [volts, current] = [exact(before.voltage(own.id)), exact(before.current(own.id))];
        // V = E′ − I′R′ with the current delivered the other way: E′ = V − I R′.
        const emf = volts.sub(current.mul(new Fraction(ohms)));
        const other: Part = {
          id: 'B99',
          kind: 'supply',
          from: own.from,
          to: own.to,
          emf: emf.toFraction(),
          internalResistance: ohms,
        };
        const after = solveExact(circuit(list.map((each) => (each === own ? other : each))));
        for (const { id } of list)
          if (id !== own.id) assert.ok(after.current(id)?.equals(exact(before.current(id))), id);
      }),
      { numRuns },
    );
  });

  it('own quantities: with more ohms a resistor never carries more current and never has less p.d.', () => {
    fc.assert(
      fc.property(plainParts, fc.nat(), positive, (list, place, more) => {
        const resistors = list.filter(({ kind }) => kind === 'resistor');
        const own = resistors[place % resistors.length];
        fc.pre(own !== undefined);
        const raised = part(own.id, own.from, own.to, ohmsOf(own).add(new Fraction(more)));
        const [before, after] = [list, list.map((each) => (each === own ? raised : each))].map((each) =>
          solveExact(circuit(each)),
        );
        assert.ok(
          exact(after?.current(own.id))
            .abs()
            .compare(exact(before?.current(own.id)).abs()) <= 0,
        );
        assert.ok(
          exact(after?.voltage(own.id))
            .abs()
            .compare(exact(before?.voltage(own.id)).abs()) >= 0,
        );
      }),
      { numRuns },
    );
  });

  it('meters: a real voltmeter reads V R/(R + R₀) of what an ideal one reads, so never more', () => {
    fc.assert(
      fc.property(plainParts, positive, (list, ohms) => {
        const voltmeter = { id: 'V99', kind: 'voltmeter', from: 'a', to: 'b' };
        const ideal = exact(solveExact(circuit([...list, voltmeter])).voltage('V99'));
        const real = exact(solveExact(circuit([...list, { ...voltmeter, resistance: ohms }])).voltage('V99'));
        const seen = between(passive(list), 'a', 'b');
        const own = new Fraction(ohms);
        assert.ok(real.equals(ideal.mul(own).div(own.add(seen))));
      }),
      { numRuns },
    );
  });
});
