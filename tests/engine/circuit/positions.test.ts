import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { positions } from '../../../src/engine/circuit/index.ts';
import { formatCircuit } from '../../../src/engine/notation/format/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';

const written = (line: string): readonly string[] =>
  positions(parseCircuit(line)).map((each) => formatCircuit(each));

describe('the positions of what has two contacts or two parts', () => {
  it('are one where nothing turns over or slides', () => {
    const circuit = parseCircuit('B1 6 V + S1 open + R1 [4..40] 12 Ω');
    assert.deepEqual(positions(circuit), [circuit]);
  });

  for (const line of [
    'B1 6 V + (changeover S1a closed + R1 4 Ω ∥ changeover S1b open + R2 8 Ω)',
    'B1 6 V + (changeover S1a open + R1 4 Ω ∥ changeover S1b closed + R2 8 Ω)',
  ])
    it(`of a changeover switch are the present one and the other contact: ${line}`, () => {
      const [now, other, ...more] = written(line);
      assert.deepEqual(more, []);
      assert.equal(now, formatCircuit(parseCircuit(line)));
      const swapped = line.replace('closed', 'OPEN').replace('open', 'closed').replace('OPEN', 'open');
      assert.equal(other, formatCircuit(parseCircuit(swapped)));
    });

  it('of a potentiometer are the present one, and either end: one part has all of the track', () => {
    const [now, ...ends] = written('B1 6 V + potentiometer R1a [0..100] 30 Ω + potentiometer R1b 70 Ω');
    assert.match(now ?? '', /R1a \[0\.\.100\S*\] 30 Ω .*R1b (?:\[\S+\] )?70 Ω/u);
    assert.equal(ends.length, 2);
    assert.match(ends[0] ?? '', /R1a \[0\.\.100\S*\] 0 Ω .*R1b (?:\[\S+\] )?100 Ω/u);
    assert.match(ends[1] ?? '', /R1a \[0\.\.100\S*\] 100 Ω .*R1b (?:\[\S+\] )?0 Ω/u);
  });
});
