import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { next, parseCircuit, solve, withValue, type Circuit, type State } from '../../../src/engine/index.ts';
import { anything, circuit, numRuns, parts, realSupply } from '../solve/random-circuit.ts';

const whole: State = { blown: [] };
const blown = (line: string, seconds = 1): readonly string[] =>
  next(parseCircuit(line), whole, seconds).blown;

/** A fuse of a small rating, with resistance or ideal, now and then with something done to it. */
const fuse = fc.record({
  kind: fc.constant('fuse'),
  ratedCurrent: fc.constantFrom('1/10', '1/2', '1', '3'),
  resistance: fc.constantFrom('0', '1/50'),
  condition: fc.constantFrom(undefined, undefined, undefined, 'broken', 'bridged'),
});
const fused: fc.Arbitrary<Circuit> = parts(
  realSupply(),
  fc.oneof({ weight: 2, arbitrary: fuse }, { weight: 3, arbitrary: anything() }),
).map((list) => circuit(list));

const fusesOf = ({ components }: Circuit): string[] =>
  components.filter(({ kind }) => kind === 'fuse').map(({ id }) => id);

describe('next', () => {
  it('blows a fuse above its rating, and none at it', () => {
    assert.deepEqual(blown('B1 6 V + F1 2 A + R1 2 Ω'), ['F1']);
    assert.deepEqual(blown('B1 6 V + F1 3 A + R1 2 Ω'), []);
    // 0.3 A three times over from tenths: a rounding above is not above.
    assert.deepEqual(blown('B1 0.3 V + F1 0.9 A + (R1 1 Ω ∥ R2 1 Ω ∥ R3 1 Ω)'), []);
  });

  it('blows what a secret fault overloads, and no fuse that has one itself', () => {
    assert.deepEqual(blown('B1 6 V r 1 Ω + F1 2 A + R1 9 Ω secretly bridged'), ['F1']);
    assert.deepEqual(blown('B1 6 V + F1 2 A + R1 9 Ω secretly bridged'), ['F1']);
    assert.deepEqual(blown('B1 6 V + F1 2 A + R1 2 Ω secretly broken'), []);
    assert.deepEqual(blown('B1 6 V + F1 2 A secretly bridged + R1 2 Ω'), []);
    assert.deepEqual(blown('B1 6 V secretly bridged + F1 2 A + R1 2 Ω'), []);
  });

  it('does nothing in no time, nor in a time that is none', () => {
    for (const seconds of [0, -1, NaN]) {
      assert.equal(next(parseCircuit('B1 6 V + F1 2 A + R1 2 Ω'), whole, seconds), whole);
    }
  });

  it('blows the furthest above its rating first, and spares those that this saves', () => {
    // 3 A through both: F2 carries 3 times its rating, F1 1.5 times.
    assert.deepEqual(blown('B1 6 V + F1 2 A + F2 1 A + R1 2 Ω'), ['F2']);
  });

  it('goes on to those that get what another left', () => {
    // 2 A and 1 A; when F1 has blown, all of 3 V / 1 Ω passes F2.
    const line = 'B1 3 V + R3 1 Ω + ((F1 0.5 A 0.01 Ω) ∥ (F2 2 A 0.02 Ω))';
    assert.deepEqual(blown(line), ['F1', 'F2']);
  });

  it('blows a fuse in a loop that nothing limits, the smallest first', () => {
    assert.deepEqual(blown('B1 6 V + F1 13 A'), ['F1']);
    assert.deepEqual(blown('B1 6 V + F1 13 A + F2 3 A'), ['F2']);
    assert.deepEqual(blown('B1 6 V ∥ (B2 9 V + F1 5 A)'), ['F1']);
  });

  it('does not blow what a wire bridges, nor what is taken out', () => {
    assert.deepEqual(blown('B1 6 V + F1 2 A 0.1 Ω bridged + R1 2 Ω'), []);
    assert.deepEqual(blown('B1 6 V + F1 2 A broken + R1 2 Ω'), []);
  });

  it('blows the fuse of a circuit with a curve', () => {
    assert.deepEqual(blown('B1 12 V + F1 0.5 A + L1 12 V 24 W filament'), ['F1']);
  });

  it('ends, keeps what has blown, and leaves none above its rating', () => {
    fc.assert(
      fc.property(fused, fc.nat({ max: 255 }), (each, draw) => {
        const before: State = { blown: fusesOf(each).filter((_, k) => (draw >> (k % 8)) & 1) };
        const after = next(each, before, 1);
        assert.deepEqual(after.blown.slice(0, before.blown.length), before.blown);
        assert.equal(new Set(after.blown).size, after.blown.length);
        assert.ok(after.blown.every((id) => fusesOf(each).includes(id)));
        assert.equal(next(each, after, 1), after);
        const { cautions } = solve(each, { state: after });
        const left = cautions.filter(({ code }) => code === 'fuse would blow').flatMap(({ ids }) => ids);
        assert.deepEqual(
          left.filter((id) => !each.components.some((c) => c.id === id && c.condition)),
          [],
        );
      }),
      { numRuns },
    );
  });
});

describe('solve of a state', () => {
  it('reads as the circuit whose fuses are set to blown', () => {
    fc.assert(
      fc.property(fused, (each) => {
        const [id] = fusesOf(each);
        if (!id) return;
        const [there, here] = [solve(withValue(each, id, 'blown')), solve(each, { state: { blown: [id] } })];
        assert.deepEqual(here.faults, there.faults);
        for (const { id } of each.components) assert.equal(here.current(id), there.current(id));
      }),
      { numRuns: numRuns / 4 },
    );
  });

  it('takes no notice of ids that are no fuses of the circuit', () => {
    const each = parseCircuit('B1 6 V + F1 2 A + R1 2 Ω');
    assert.equal(solve(each, { state: { blown: ['R1', 'F9'] } }).current('R1'), 3);
  });
});
