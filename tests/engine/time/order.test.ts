import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { next, parseCircuit, solve, type State } from '../../../src/engine/index.ts';

const whole: State = { blown: [] };
const blown = (line: string): readonly string[] => next(parseCircuit(line), whole, 1).blown;

void describe('which fuse blows', () => {
  void it('of two that carry as many times their rating, the first; of two without limit, the smaller', () => {
    assert.deepEqual(blown('B1 6 V + F1 1 A + F2 1 A + R1 3 Ω'), ['F1']);
    assert.deepEqual(blown('B1 6 V + F2 1 A + F1 1 A + R1 3 Ω'), ['F2']);
    assert.deepEqual(blown('B1 6 V + F1 3 A + F2 3 A'), ['F1']);
    assert.deepEqual(blown('B1 6 V + F1 5 A + F2 3 A + F3 4 A'), ['F2']);
  });

  void it('is one in the loop that nothing limits, whatever is smaller elsewhere', () => {
    assert.deepEqual(blown('B1 6 V ∥ F1 1 A ∥ (F2 0.6 A + R1 12 Ω)'), ['F1']);
  });

  void it('is none where the circuit has no answer for another reason', () => {
    // Two paths without resistance: how 3 A shares between them is not determined.
    const line = 'B1 6 V + R1 2 Ω + (F1 0.5 A ∥ F2 0.5 A)';
    assert.equal(solve(parseCircuit(line)).faults[0]?.code, 'share undetermined');
    assert.deepEqual(blown(line), []);
  });

  void it('is none where no current flows', () => {
    assert.deepEqual(blown('B1 6 V + F1 0.5 A + S1 open + R1 2 Ω'), []);
    assert.deepEqual(blown('B1 6 V + F1 0.5 A + R1 2 Ω broken'), []);
  });

  void it('does not depend on which way round it or the supply stands', () => {
    for (const turned of ['', ' reversed'])
      for (const round of ['', ' reversed'])
        assert.deepEqual(blown(`B1 6 V${turned} + F1 2 A${round} + R1 2 Ω`), ['F1']);
  });

  void it('blows above its rating and holds below, to one part in a million', () => {
    const milliamps = fc.integer({ min: 1, max: 5000 });
    fc.assert(
      fc.property(milliamps, fc.boolean(), (rating, above) => {
        // The current in microamps, one part in a million beside the rating; the e.m.f. drives it through 1 Ω.
        const micro = rating * 1000 * 1_000_000 + (above ? 1000 * rating : -1000 * rating);
        const line = `B1 ${micro / 1e12} V + F1 ${rating} mA + R1 1 Ω`;
        assert.deepEqual(blown(line), above ? ['F1'] : [], line);
      }),
    );
  });
});

void describe('a chain of branches with a fuse each', () => {
  /** Branches side by side after a resistor, each a fuse and a resistor. */
  const branches = fc.array(
    fc.record({ rating: fc.integer({ min: 1, max: 20 }), ohms: fc.integer({ min: 1, max: 20 }) }),
    { minLength: 1, maxLength: 4 },
  );
  void it('blows one after another as a reckoning by hand has it', () => {
    fc.assert(
      fc.property(branches, fc.integer({ min: 1, max: 40 }), (all, volts) => {
        const parts = all.map(
          ({ rating, ohms }, k) => `(F${k + 1} ${rating * 100} mA + R${k + 1} ${ohms} Ω)`,
        );
        const line = `B1 ${volts} V r 1 Ω + (${parts.join(' ∥ ')})`;
        // By hand: the p.d. over the branches left from their conductances; the furthest above its rating goes.
        const gone: string[] = [];
        for (;;) {
          const left = all.flatMap((one, k) =>
            gone.includes(`F${k + 1}`) ? [] : [{ ...one, id: `F${k + 1}` }],
          );
          const conductance = left.reduce((sum, { ohms }) => sum + 1 / ohms, 0);
          const across = volts / (1 + conductance);
          const times = left.map(({ rating, ohms }) => (across / ohms / rating) * 10);
          const most = Math.max(0, ...times);
          // Where two are as far above, or one is at its rating, a rounding decides: not asked.
          fc.pre(times.filter((one) => Math.abs(one - most) < 1e-9).length <= 1);
          fc.pre(Math.abs(most - 1) > 1e-6);
          if (most <= 1) break;
          gone.push(left[times.indexOf(most)]?.id ?? '');
        }
        assert.deepEqual(blown(line), gone, line);
      }),
    );
  });
});
