import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { anyCircuit, circuit, numRuns, plainParts, type Part } from './random-circuit.ts';
import { short } from './short.ts';

const letters = ['I', 'V'] as const;

describe('supplies of constant current', () => {
  it('with a resistance beside them stand for supplies with it inside (E. L. Norton 1926)', () => {
    fc.assert(
      fc.property(plainParts, fc.nat(), (list, pick) => {
        const supplies = list.filter(({ kind }) => kind === 'supply');
        const own = supplies[pick % supplies.length];
        assert.ok(own);
        const { id, from, to } = own;
        const [emf, ohms] = [own['emf'], own['internalResistance']].map(
          (value) => new Fraction(value as string),
        );
        assert.ok(emf && ohms);
        const norton: Part[] = [
          { kind: 'source', id: 'I0', from, to, current: emf.div(ohms).toFraction() },
          { kind: 'resistor', id: 'R0', from, to, resistance: ohms.toFraction() },
        ];
        const [before, after] = [list, [...list.filter((part) => part !== own), ...norton]].map((parts) =>
          solveExact(circuit(parts)),
        );
        assert.ok(before && after);
        for (const part of list.filter((each) => each !== own))
          for (const letter of letters)
            assert.ok(
              before.quantity(`${letter}_${part.id}`)?.equals(after.quantity(`${letter}_${part.id}`) ?? NaN),
            );
        assert.ok(before.voltage(id)?.equals(after.voltage('I0') ?? NaN));
      }),
      { numRuns: numRuns / 4 },
    );
  });

  it('may stand for any component by its current, and change nothing (the substitution theorem)', () => {
    let replaced = 0;
    fc.assert(
      fc.property(anyCircuit, fc.nat(), (whole, pick) => {
        const before = solveExact(whole);
        const own = whole.components[pick % whole.components.length];
        const current = own && before.current(own.id);
        if (!own || own.condition || !current?.n || own.kind === 'source') return;
        // What a supply delivers leaves it at its first end, the current of anything else at its other one.
        const [from, to] = own.kind === 'supply' ? [own.from, own.to] : [own.to, own.from];
        const source: Part = { kind: 'source', id: 'I0', from, to, current: current.toFraction() };
        const { components } = circuit([source, { kind: 'resistor', id: 'R0', from, to, resistance: '1' }]);
        const after = solveExact({
          components: whole.components.map((each) => (each === own ? (components[0] ?? each) : each)),
        });
        // Where it was the only path between two sides, or their one way beside another supply of constant current, it stays no path.
        if (after.status === 'faulty') return;
        replaced += 1;
        for (const { id } of whole.components.filter((each) => each !== own))
          for (const name of letters.map((letter) => `${letter}_${id}`)) {
            const [one, other] = [before.quantity(name), after.quantity(name)];
            assert.ok(one && other ? one.equals(other) : one === other, name);
          }
      }),
      { numRuns },
    );
    assert.ok(replaced > numRuns / 4, `${replaced}`);
  });

  it('are what Norton has in Lessons In Electric Circuits, Volume I (T. R. Kuphaldt), "Norton’s theorem": 14 A beside 0.8 Ω gives 2 Ω 4 A at 8 V (from memory)', () => {
    const solution = solveExact(short('I1 a g 14; R1 a g 0.8; R2 a g 2'));
    assert.equal(solution.current('R2')?.toFraction(), '4');
    assert.equal(solution.voltage('R2')?.toFraction(), '8');
    const two = solveExact(short('B1 a g 28; R1 a b 4; R2 b g 2; R3 b c 1; B2 c g 7'));
    assert.equal(two.current('R2')?.toFraction(), '4');
  });

  it('take no part in the total resistance, which is their p.d. over their current', () => {
    const solution = solveExact(short('I1 a g 1/2; R1 a b 12; R2 b g 6; R3 b g 3'));
    assert.equal(solution.totalResistance()?.toFraction(), '14');
    assert.equal(solution.quantity('R_loop'), undefined);
    assert.equal(solution.reason('R_loop')?.code, 'no such quantity');
    // Without a current there is a resistance all the same.
    assert.equal(solveExact(short('I1 a g 0; R1 a g 12')).totalResistance()?.toFraction(), '12');
    assert.equal(
      solveExact(short('I1 a g 1; R1 a g 12; B1 a h 6; R2 h g 1')).reason('R_total')?.code,
      'several supplies',
    );
  });
});
