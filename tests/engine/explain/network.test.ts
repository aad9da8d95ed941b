import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { branchesOf, isGiven } from '../../../src/engine/explain/kirchhoff/branches.ts';
import { networkOf } from '../../../src/engine/explain/kirchhoff/network.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { web } from './random-web.ts';
import { truthOf } from './truth.ts';

const real =
  ({ components }: Circuit) =>
  (id: string): boolean =>
    components.some((one) => one.id === id && one.kind === 'supply' && one.internalResistance !== undefined);
/** What is known of a circuit: the resistances of its parts, its e.m.f.s and what follows from constant currents; no other current. */
const knownIn = (circuit: Circuit) => {
  const truth = truthOf(circuit);
  const constant = new Set(
    branchesOf(circuit)
      .filter(isGiven)
      .map(({ current }) => current),
  );
  return (name: string): Fraction | undefined =>
    /^[REr]_/.test(name) || constant.has(name) ? new Fraction(truth(name)) : undefined;
};
const near = (a: number, b: number, what: string): void => {
  assert.ok(Math.abs(a - b) <= 1e-9 * (1 + Math.abs(a)), `${what}: ${a} is not ${b}`);
};

const bridge = parseCircuit('B1 24 V + ((R1 1 Ω + @l + R4 2 Ω) ∥ (R2 3 Ω + @q + R5 4 Ω)); R3 5 Ω @q–@l');

describe('the branches of a circuit', () => {
  const labels = (line: string): readonly string[] =>
    branchesOf(parseCircuit(line)).map(
      ({ current, passed }) => `${current}: ${passed.map(({ part }) => part.label).join(' ')}`,
    );
  it('hold all that one current flows through, and are called after a resistance', () => {
    const line = 'B1 6 V r 1 Ω + R1 2 Ω + @a + R2 3 Ω + @b; B2 4 V @b–@a';
    assert.deepEqual(
      labels(line).map((one) => one.slice(0, 5)),
      ['I_R1:', 'I_R2:', 'I_B2:'],
    );
    assert.equal(labels(line).find((one) => one.startsWith('I_R1'))?.length, 'I_R1: B1 R1'.length);
  });
  it('take a block without a supply as one', () => {
    assert.ok(
      labels('B1 6 V r 1 Ω + @a + (R1 2 Ω ∥ R2 3 Ω) + R3 1 Ω + @b; B2 4 V r 1 Ω @b–@a').some((one) =>
        one.includes('R1∥R2'),
      ),
    );
  });
  it('of a bridge are six, of a single loop one', () => {
    assert.equal(branchesOf(bridge).length, 6);
    assert.equal(branchesOf(parseCircuit('B1 6 V + R1 1 Ω + R2 2 Ω')).length, 1);
  });
  it('each carry one current the whole way', () => {
    fc.assert(
      fc.property(web, (circuit) => {
        const truth = truthOf(circuit);
        for (const { current, passed } of branchesOf(circuit))
          for (const { part, along } of passed)
            near(truth(`I_${part.label}`) * along, truth(current), `${part.label} in ${current}`);
      }),
    );
  });
});

describe('the unknown currents', () => {
  it('are as few as there are independent loops without a constant current: branches less nodes, and one', () => {
    fc.assert(
      fc.property(web, (circuit) => {
        const branches = branchesOf(circuit);
        const nodes = new Set(branches.flatMap(({ tail, head }) => [tail, head]));
        const { chords, junction } = networkOf(branches, real(circuit), knownIn(circuit));
        const constant = branches.filter(isGiven).length;
        assert.equal(chords.length, branches.length - constant - nodes.size + 1);
        assert.equal(junction.size, nodes.size - 1);
      }),
    );
  });
  it('leave the current of a supply without resistance to the end', () => {
    const { chords } = networkOf(branchesOf(bridge), real(bridge), knownIn(bridge));
    assert.deepEqual(chords.map(({ current }) => current).toSorted(), ['I_R1', 'I_R2', 'I_R3']);
  });
  it('make up all the others, as the solver finds them', () => {
    fc.assert(
      fc.property(web, (circuit) => {
        const truth = truthOf(circuit);
        const { currents, junction } = networkOf(branchesOf(circuit), real(circuit), knownIn(circuit));
        for (const [branch, { number, of }] of currents) {
          const sum = [...of].reduce((whole, [name, factor]) => whole + factor.valueOf() * truth(name), 0);
          near(number.valueOf() + sum, truth(branch.current), branch.current);
        }
        for (const [branch, sum] of junction)
          near(
            sum.reduce((whole, [one, sign]) => whole + sign * truth(one.current), 0),
            truth(branch.current),
            branch.current,
          );
      }),
    );
  });
});

it('a loop closes on itself, and the p.d.s round it come to nothing', () => {
  fc.assert(
    fc.property(web, (circuit) => {
      const solution = solveExact(circuit);
      const network = networkOf(branchesOf(circuit), real(circuit), knownIn(circuit));
      for (const chord of network.chords) {
        const loop = network.loop(chord);
        let at = chord.tail;
        let sum = 0;
        for (const [{ tail, head, passed }, along] of loop) {
          assert.equal(along === 1 ? tail : head, at);
          at = along === 1 ? head : tail;
          for (const one of passed) {
            const { kind, label } = one.part;
            if (label.startsWith('(')) return;
            // A supply's own current leaves its positive end: along it the potential rises.
            const drop =
              (solution.voltage(label)?.valueOf() ?? NaN) * (kind === 'supply' || kind === 'source' ? -1 : 1);
            sum += along * one.along * drop;
          }
        }
        assert.equal(at, chord.tail);
        near(sum, 0, chord.current);
      }
    }),
  );
});
