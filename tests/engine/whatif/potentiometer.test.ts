import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { isTrack, withValue } from '../../../src/engine/circuit/index.ts';
import { testClaim } from '../../../src/engine/claims/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { solve, solveExact } from '../../../src/engine/solve/index.ts';
import { sensitivity, sweep } from '../../../src/engine/whatif/index.ts';
import { wiperLines } from '../schematic/random-wipers.ts';

const divider = parseCircuit('B1 6 V + potentiometer R1b 70 Ω + (potentiometer R1a 30 Ω ∥ V1)');
const dimmer = parseCircuit(
  'B1 6 V + potentiometer R1b 70 Ω + (potentiometer R1a [0..100 step 1] 30 Ω ∥ L1 6 V 3 W)',
);

describe('the sensitivity to a potentiometer', () => {
  it('without a load is that of a straight line: E over the whole track, and the current stays', () => {
    const found = sensitivity(divider, 'V_V1', 'R1a');
    assert.deepEqual([found.value.toFraction(), found.direction], ['3/50', 'rises']);
    const other = sensitivity(divider, 'V_V1', 'R1b');
    assert.deepEqual([other.value.toFraction(), other.direction, other.reasons], ['-3/50', 'falls', []]);
    assert.deepEqual(sensitivity(divider, 'I_B1', 'R1a').direction, 'stays the same');
    assert.equal(sensitivity(divider, 'R_R1b', 'R1a').value.valueOf(), -1);
  });

  it('is the limit of what a little slide changes', () => {
    fc.assert(
      fc.property(wiperLines, fc.nat(), fc.nat(), (line, pick, what) => {
        const circuit = parseCircuit(line);
        const tracks = circuit.components.filter(isTrack);
        const part = tracks[pick % tracks.length];
        const id = circuit.components[what % circuit.components.length]?.id ?? '';
        const letter = ['I', 'V', 'P'][what % 3] ?? 'I';
        const name = `${letter}_${id}`;
        // At an end of the track there is nothing on its other side.
        fc.pre(part !== undefined && Number(part.resistance.value) > 1);
        const free = {
          ...circuit,
          components: circuit.components.map((each) => {
            if (!isTrack(each)) return each;
            const { id, kind, from, to, resistance } = each;
            return { id, kind, from, to, resistance };
          }),
        };
        const little = '0.000000001';
        const at = part.resistance.value;
        const reads = [at.sub(little), at].map((ohms) =>
          solveExact(withValue(free, part.id, ohms)).quantity(name),
        );
        const [below, here] = reads;
        fc.pre(below !== undefined && here !== undefined);
        const found = Number(sensitivity(circuit, name, part.id).value);
        const slope = Number(here.sub(below).div(little));
        assert.ok(
          Math.abs(found - slope) <= 1e-6 * Math.max(1, Math.abs(found)),
          `${name} ${found} ${slope}`,
        );
      }),
      { numRuns: 200 },
    );
  });
});

describe('a sweep along a potentiometer', () => {
  it('goes over its range, or over a span beyond it, and solves each place', () => {
    const { settings, values } = sweep(dimmer, 'R1a', undefined, ['V_L1', 'R_R1b']);
    assert.deepEqual([settings[0], settings.at(-1), settings.length], [0, 100, 101]);
    assert.deepEqual([values['V_L1']?.[0], values['V_L1']?.at(-1)], [0, 6]);
    assert.deepEqual(values['R_R1b']?.slice(0, 3), [100, 99, 98]);
    for (const [place, setting] of settings.entries()) {
      const expected = solve(withValue(dimmer, 'R1a', Math.round(setting))).quantity('V_L1') ?? NaN;
      assert.ok(Math.abs((values['V_L1']?.[place] ?? NaN) - expected) < 1e-9, `${setting}`);
    }
    const stops = parseCircuit('B1 6 V + potentiometer R1a [10..80] 30 Ω + potentiometer R1b 70 Ω');
    assert.deepEqual(
      sweep(stops, 'R1b', { from: 0, to: 100, points: 3 }, ['V_R1a']).values['V_R1a'],
      [6, 3, 0],
    );
    assert.throws(() => sweep(stops, 'R1b', { from: 0, to: 101 }, ['V_R1a']), /outside/);
    assert.throws(() => sweep(divider, 'R1a', undefined, ['V_V1']), RangeError);
  });
});

describe('a claim along a potentiometer', () => {
  it('is tried at each of its places, once for both parts', () => {
    const always = testClaim(dimmer, 'V_R1a + V_R1b = V_B1');
    assert.deepEqual([always.verdict, always.tried, always.proved], ['always', 101, true]);
    const sometimes = testClaim(dimmer, 'V_L1 < 3 V');
    assert.equal(sometimes.verdict, 'sometimes');
    const at = Object.entries(sometimes.counterexample ?? {});
    assert.deepEqual(
      at.map(([id]) => id),
      ['R1a'],
    );
    const failing = at.reduce((now, [id, value]) => withValue(now, id, value), dimmer);
    assert.ok(Number(solveExact(failing).quantity('V_L1')) >= 3);
    assert.equal(testClaim(divider, 'V_V1 = 1.8 V').tried, 1);
  });

  it('beside a slider goes along that one, and says how many settings it has tried where they are too many', () => {
    const both = parseCircuit(
      'B1 6 V + R2 [0..50 step 1] 5 Ω + potentiometer R1b 70 Ω + (potentiometer R1a [0..100 step 1] 30 Ω ∥ L1 6 V 3 W)',
    );
    const { verdict, tried, proved } = testClaim(both, 'V_L1 <= V_B1');
    assert.deepEqual([verdict, tried, proved], ['always', 51 * 101, true]);
    const long = parseCircuit(
      'B1 6 V + potentiometer R1b 7000 Ω + (potentiometer R1a [0..10000 step 1] 3000 Ω ∥ L1 6 V 3 W)',
    );
    const many = testClaim(long, 'V_L1 < V_B1 + 1');
    assert.deepEqual([many.verdict, many.tried, many.proved], ['always', 4000, false]);
  });
});
