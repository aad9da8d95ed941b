import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { curves } from '../../../src/engine/nonlinear/index.ts';
import { equip, solve } from '../../../src/engine/solve/index.ts';
import { say } from '../../../src/engine/words/index.ts';

equip(curves);

/** The cautions of a line, as sentences. */
const cautions = (line: string): string =>
  solve(parseCircuit(line))
    .cautions.map((each) => say(each))
    .join(' ');

describe('a caution', () => {
  it('is given for a hidden e.m.f. without giving it away', () => {
    const said = cautions('B1 137 V hidden + R1 1 kΩ');
    assert.match(said, /more than 60/);
    assert.doesNotMatch(said, /137/);
  });

  it('is given for a hidden rating without giving it away', () => {
    const said = cautions('B1 12 V + R1 12 Ω 0.25 W hidden');
    assert.match(said, /^Caution: R1 takes 12\.0/);
    assert.doesNotMatch(said, /0\.25/);
    assert.match(cautions('B1 12 V + R1 12 Ω 0.25 W'), /0\.25/);
    for (const part of ['F1 1.25 A', 'LED1 2 V 1.25 A']) {
      assert.match(cautions(`B1 12 V + R1 1 Ω + ${part}`), /more than its rating of 1\.25\sA/);
      assert.match(cautions(`B1 12 V + R1 1 Ω + ${part} hidden`), /more than its rating of \?/);
    }
  });

  it('tells a rating as it is marked; what two ratings make together, like a reading', () => {
    for (const [part, rating] of [
      ['LED1 2 V 20 mA', '20 mA'],
      ['F1 500 mA', '500 mA'],
      ['L1 6 V 60 mW', '60 mW'],
      ['L1 6 V 0.06 A', '0.360 W'],
    ] as const)
      assert.ok(
        cautions(`B1 24 V + R1 1 Ω + ${part}`)
          .replaceAll('\u202f', ' ')
          .includes(`more than its rating of ${rating}`),
        part,
      );
  });

  it('is not given of the supply that a network without one is measured with', () => {
    assert.equal(cautions('R1 10 Ω ∥ S1 closed'), '');
    assert.match(cautions('B1 6 V r 1 Ω + S1 closed'), /^Caution: B1 is short-circuited\./);
  });
});
