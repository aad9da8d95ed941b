import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { circuitFrom, circuitToJSON, isTrack, withValue } from '../../../src/engine/circuit/index.ts';
import { formatCircuit } from '../../../src/engine/notation/format/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { wiperLines } from '../schematic/random-wipers.ts';
import { sameCircuit } from './same-circuit.ts';

test('any circuit with potentiometers is written in a line and in JSON and read back, wherever they stand', () => {
  fc.assert(
    fc.property(wiperLines, fc.array(fc.tuple(fc.nat(), fc.nat(10)), { maxLength: 4 }), (line, slides) => {
      const start = parseCircuit(line);
      const tracks = start.components.filter(isTrack);
      const circuit = slides.reduce((now, [pick, share]) => {
        const [id = '', most] = [
          tracks[pick % tracks.length]?.id,
          tracks[pick % tracks.length]?.range?.max.value,
        ];
        return most ? withValue(now, id, most.mul(share).div(10)) : now;
      }, start);
      sameCircuit(parseCircuit(formatCircuit(circuit)), circuit, line);
      const json = circuitToJSON(circuit);
      assert.deepEqual(circuitToJSON(circuitFrom(json)), json);
    }),
    { numRuns: 500 },
  );
});

test('the range and the rating of a potentiometer are written with its first part, wherever they were given', () => {
  const line = (first: string, second: string): string =>
    `B1 6 V + potentiometer R1b ${second} + potentiometer R1a ${first}`;
  const canonical = line('[0..100 step 1] 30 Ω 2 W', '70 Ω');
  for (const written of [
    canonical,
    line('30 Ω 2 W', '[0..100 step 1] 70 Ω'),
    line('[0..100 step 1] 30 Ω', '70 Ω 2 W'),
    line('30 Ω', '2 W [0..100 step 1] 70 Ω'),
    line('2 W 30 Ω [0..100 step 1]', '[0..100 step 1] 70 Ω'),
  ])
    assert.equal(formatCircuit(parseCircuit(written)), canonical, written);
});

test('each part stays written the way it was, whichever is slid', () => {
  const line = 'B1 6 V + potentiometer R1a 300 Ω + potentiometer R1b 4.7 kΩ';
  assert.equal(
    formatCircuit(withValue(parseCircuit(line), 'R1a', 1000)),
    'B1 6 V + potentiometer R1a 1000 Ω + potentiometer R1b 4.0 kΩ',
  );
});

test('a part that the other one gives its range has the prefix of its own value', () => {
  const line = 'B1 6 V + potentiometer R1a [0..10] 4.7 kΩ + potentiometer R1b 5k3';
  assert.equal(
    formatCircuit(withValue(parseCircuit(line), 'R1b', 2000)),
    'B1 6 V + potentiometer R1a [0..10 step 0.1] 8.0 kΩ + potentiometer R1b 2.0 kΩ',
  );
});
