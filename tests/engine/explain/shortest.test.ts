import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { explain } from '../../../src/engine/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { cellDriven, told } from './random-circuit.ts';
import { bondsOf, isWithin } from './shortest.ts';

const small = cellDriven.filter(({ components }) => components.length <= 6);

describe('a derivation is at most one step longer than the shortest', () => {
  it('from what a line states', () => {
    fc.assert(
      fc.property(small, fc.nat(), (circuit, pick) => {
        const names = [...told(circuit).keys()].filter((name) => !/^[REr]_[A-Z]/.test(name));
        const find = names[pick % names.length] ?? '';
        const given = new Set([...told(circuit).keys()].filter((name) => /^[REr]_[A-Z]/.test(name)));
        const { steps } = explain(circuit, { find });
        const bonds = bondsOf(circuit, [...given, find]);
        assert.ok(isWithin(bonds, given, find, steps.length), `${find}: a way that the search does not find`);
        assert.ok(
          !isWithin(bonds, given, find, steps.length - 2),
          `${find}: ${steps.length} steps are too many`,
        );
      }),
      { numRuns: 200 },
    );
  });

  it('from any readings that are enough', () => {
    let compared = 0;
    const runs = 500;
    fc.assert(
      fc.property(
        small,
        fc.nat(),
        fc.array(fc.nat(), { minLength: 2, maxLength: 6 }),
        (circuit, pick, picks) => {
          const all = [...told(circuit)];
          const [find = ''] = all[pick % all.length] ?? [];
          const given = Object.fromEntries(
            picks.flatMap((one) => {
              const reading = all[one % all.length];
              return reading && reading[0] !== find ? [reading] : [];
            }),
          );
          const { status, steps } = explain(circuit, { given, find });
          if (status !== 'found') return;
          compared += 1;
          const bonds = bondsOf(circuit, [...Object.keys(given), find]);
          const start = new Set(Object.keys(given));
          assert.ok(
            isWithin(bonds, start, find, steps.length),
            `${find}: a way that the search does not find`,
          );
          assert.ok(
            !isWithin(bonds, start, find, steps.length - 2),
            `${find}: ${steps.length} steps are too many`,
          );
        },
      ),
      { numRuns: runs },
    );
    assert.ok(compared > runs / 6, `only ${compared} of ${runs} were enough`);
  });
});

it('a step that serves twice counts once: of two ways the one with fewer steps is told', () => {
  const circuit = parseCircuit('B1 12 V + R1 1 Ω + (R2 1 Ω ∥ R3 1 Ω)');
  const given = { I_R1: '8', V_R1: '8', P_R2: '16', E_B1: '12' };
  const { steps } = explain(circuit, { find: 'R_R3', given });
  assert.ok(steps.length <= 7, `${steps.length}`);
  assert.ok(!isWithin(bondsOf(circuit), new Set(Object.keys(given)), 'R_R3', steps.length - 1));
});

describe('the search', () => {
  const circuit = parseCircuit('B1 12 V + R1 4 Ω + R2 2 Ω');
  const given = new Set(['E_B1', 'R_R1', 'R_R2']);
  const bonds = bondsOf(circuit);
  it('finds the shortest way by hand: total resistance, current, the same current, p.d.', () => {
    assert.ok(isWithin(bonds, given, 'I_R2', 3));
    assert.ok(!isWithin(bonds, given, 'I_R2', 2));
    assert.ok(isWithin(bonds, given, 'R_total', 1));
    assert.ok(!isWithin(bonds, given, 'R_total', 0));
  });
  it('goes in no circle', () => {
    assert.ok(!isWithin(bonds, new Set(['R_R1']), 'I_R2', 12));
  });
  it('has nothing to do for what is given', () => {
    assert.ok(isWithin(bonds, given, 'E_B1', 0));
  });
});
