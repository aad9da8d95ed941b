import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { solve, solveExact } from '../../../src/engine/solve/index.ts';
import { disagreement, read } from './agreement.ts';
import { networkOf, networks, titlesOf } from './reference.ts';

describe('resistances of networks', () => {
  it('are all here', () => {
    assert.equal(networks.length, 85);
  });

  for (const network of networks) {
    it(`${network.name} has ${network.answer} Ω (${titlesOf(network)})`, () => {
      const circuit = networkOf(network);
      assert.equal(read(solveExact(circuit), 'R_total').toFraction(), network.answer);
      const off = read(solve(circuit), 'R_total') / Number(new Fraction(network.answer)) - 1;
      assert.ok(Math.abs(off) <= 1e-15);
    });

    it(`${network.name}, driven by 1 V: live currents within 1e-15 of the largest`, () => {
      const circuit = networkOf(network, '1');
      const names = network.edges.map((_, k) => `I_R${k + 1}`);
      assert.ok(disagreement(circuit, ['I_B1', ...names]) <= 1e-15);
    });
  }
});
