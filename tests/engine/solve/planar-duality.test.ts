// A network in the plane and its dual: N. Furrer, N. Hungerbühler and S. Jantschgi, "Resistors in dual networks", 2018.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { planeNetworks } from './plane-network.ts';
import { circuit, type Part } from './random-circuit.ts';
import { between, exact, nodesOf, ohmsOf } from './resistor-network.ts';

const numRuns = 1000;

/** The parts with an e.m.f. in the branch of this place, at its `to`. */
const driven = (list: readonly Part[], at: number, emf: string): Part[] => {
  const own = list[at];
  const moved = list.map((each) => (each === own ? { ...each, to: 'x' } : each));
  return [...moved, { id: 'B99', kind: 'supply', from: own?.to ?? '', to: 'x', emf }];
};

describe('a network in the plane and its dual', () => {
  it('have as many faces and nodes as Euler counts, and each is in one piece', () => {
    fc.assert(
      fc.property(planeNetworks, ({ list, dual }) => {
        assert.equal(nodesOf(list).length - list.length + nodesOf(dual).length, 2);
        for (const each of [list, dual]) {
          const [first = '', ...others] = nodesOf(each);
          for (const node of others) assert.ok(between(each, first, node).compare(0) > 0);
        }
      }),
      { numRuns: 100 },
    );
  });

  it('share each branch: r/R here and r/R there are 1 together', () => {
    fc.assert(
      fc.property(planeNetworks, fc.nat(), ({ list, dual }, draw) => {
        for (const at of [draw % list.length, (draw + 5) % list.length]) {
          const [here, there] = [list, dual].map((each) => {
            const own = each[at];
            assert.ok(own);
            return between(each, own.from, own.to).div(ohmsOf(own));
          });
          assert.ok(here?.add(there ?? NaN).equals(1), `R${at + 1}`);
        }
      }),
      { numRuns },
    );
  });

  it('change places: the currents of the one, driven in a branch, are the p.d.s of the other, driven in the same', () => {
    fc.assert(
      fc.property(planeNetworks, fc.nat(), ({ list, dual }, draw) => {
        const at = draw % list.length;
        const own = list[at];
        assert.ok(own);
        // An e.m.f. E in R drives what a current E/R beside R does; in the dual a current becomes a p.d., so it is an e.m.f. E/R in 1/R.
        const emf = ohmsOf(own).inverse().toFraction();
        const here = solveExact(circuit(driven(list, at, '1')));
        const there = solveExact(circuit(driven(dual, at, emf)));
        for (const { id } of list) {
          if (id === own.id) continue;
          const [current, volts] = [exact(here.current(id)).abs(), exact(there.voltage(id)).abs()];
          assert.ok(current.equals(volts), `${id}: ${current.toFraction()} A, ${volts.toFraction()} V`);
        }
      }),
      { numRuns },
    );
  });
});
