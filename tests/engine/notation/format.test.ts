import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { circuitFrom, withValue, type Circuit } from '../../../src/engine/circuit/index.ts';
import { formatCircuit } from '../../../src/engine/notation/format/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { sameCircuit } from './same-circuit.ts';

describe('The canonical form', () => {
  const forms: readonly (readonly [law: string, line: string, written: string])[] = [
    ['starts with the first supply', 'R1 5 Ω + B1 6 V', 'B1 6 V + R1 5 Ω'],
    ['brackets a parallel group in a chain', 'R1 1 Ω ∥ R2 2 Ω + R3 3 Ω', '(R1 1 Ω ∥ R2 2 Ω) + R3 3 Ω'],
    ['has no bracket that says nothing', '(R1 1 Ω + (R2 2 Ω)) + R3 3 Ω', 'R1 1 Ω + R2 2 Ω + R3 3 Ω'],
    [
      'has decimals and prefix as written',
      'B1 12.0 V + R1 4k70 + R2 0.50 kΩ',
      'B1 12.0 V + R1 4.70 kΩ + R2 0.50 kΩ',
    ],
    ['has a decimal point', 'R1 4,7 Ω', 'R1 4.7 Ω'],
    ['has a fraction where no decimal is exact', 'R1 1/3 kΩ', 'R1 1/3 kΩ'],
    ['has the power of ten of a number too long to read', 'R1 1e20 Ω + R2 1e-20 Ω', 'R1 1e20 Ω + R2 1e-20 Ω'],
    ['keeps the cells of a battery', 'battery B1 2x1.50 V r 1 Ω + R1 5 Ω', 'B1 2 × 1.50 V r 1 Ω + R1 5 Ω'],
    [
      'orders properties',
      'R1 hidden ±5% 0.5 W 8 Ω [2..40] reversed',
      'R1 [2..40] 8 Ω 0.5 W ±5% reversed hidden',
    ],
    [
      'orders the properties of a supply',
      'B1 bridged r [0..2] 0.5 Ω reversed 6 V hidden [0..12] + R1 5 Ω',
      'B1 [0..12] 6 V r [0..2] 0.5 Ω bridged hidden + R1 5 Ω reversed',
    ],
    [
      'has the range of a battery before its cells',
      'B1 4 × 1.50 V [-12.0..12 step 0.5] + L1 5 Ω broken',
      'B1 [-12.0..12 step 0.5] 4 × 1.50 V + L1 5 Ω broken',
    ],
    [
      'has the lines of a circuit whose components are intact, whatever is done to them',
      'B1 6 V + S1 closed bridged + (L1 8 Ω broken ∥ R1 5 Ω bridged); V1 broken across S1',
      'B1 6 V + S1 closed bridged + (L1 8 Ω broken ∥ R1 5 Ω bridged); V1 broken across S1',
    ],
    ['writes the step that is not understood', 'R1 [2..40 step 2] 8 Ω', 'R1 [2..40 step 2] 8 Ω'],
    ['leaves out the step that is', 'R1 [2..40 step 1] 8 Ω', 'R1 [2..40] 8 Ω'],
    [
      'writes a unit in a range where it is not the value’s',
      'R1 [10..1k E12] 470 Ω',
      'R1 [10..1 kΩ E12] 470 Ω',
    ],
    ['says what a switch is', 'S1 + R1 5 Ω', 'S1 open + R1 5 Ω'],
    [
      'has a kind word only where the label does not say it',
      'lamp L1 8 Ω + lamp X 6 V 3 W',
      'L1 8 Ω + lamp X 6 V 3 W',
    ],
    ['writes ratings in the order V, W, A', 'L1 0.3 A 2.5 V', 'L1 2.5 V 0.3 A'],
    ['turns round what stands against the direction', 'B1 6 V ∥ R1 5 Ω', 'B1 6 V + R1 5 Ω reversed'],
    [
      'lets a second cell aid or oppose',
      'B1 6 V + B2 3 V reversed + B3 1 V',
      'B1 6 V + B2 3 V reversed + B3 1 V',
    ],
    [
      'writes a voltmeter across its component',
      'B1 6 V + R1 1 Ω + (R2 2 Ω ∥ V1)',
      'B1 6 V + R1 1 Ω + R2 2 Ω; V1 across R2',
    ],
    [
      'writes a voltmeter across a load before a supply',
      'B1 6 V + R1 1 Ω; V1 across B1',
      'B1 6 V + R1 1 Ω; V1 across R1',
    ],
    [
      'writes a voltmeter across a cell',
      'B1 3 V + B2 3 V + R1 1 Ω; V1 across B2',
      'B1 3 V + B2 3 V + R1 1 Ω; V1 across B2',
    ],
    [
      'writes a voltmeter across a group by junctions',
      'B1 6 V + ((R1 1 Ω ∥ R2 2 Ω) ∥ V1) + R3 3 Ω',
      'B1 6 V + @a + (R1 1 Ω ∥ R2 2 Ω) + @b + R3 3 Ω; V1 @a–@b',
    ],
    ['keeps a voltmeter in series', 'B1 6 V + V1 + R1 1 Ω', 'B1 6 V + V1 + R1 1 Ω'],
    [
      'keeps the names of junctions that are used',
      'B1 6 V + ((R1 1 Ω + @quay + R2 2 Ω) ∥ (R3 3 Ω + @z9 + R4 4 Ω)); R5 5 Ω @z9–@quay; V1 across R4',
      'B1 6 V + ((R1 1 Ω + @quay + R2 2 Ω) ∥ (R3 3 Ω + @z9 + R4 4 Ω)); R5 5 Ω @z9–@quay; V1 across R4',
    ],
    [
      'writes a bridge with its latest arm placed',
      'R1 1 Ω @a–@b; R2 2 Ω @a–@c; R3 3 Ω @b–@d; R4 4 Ω @c–@d; R5 5 Ω @b–@c; ends @a–@d',
      '(R1 1 Ω + @b + R3 3 Ω) ∥ (R2 2 Ω + @c + R4 4 Ω); R5 5 Ω @b–@c',
    ],
    [
      'writes a dead end with everything placed',
      'B1 6 V + @p + R1 1 Ω; R2 2 Ω @p–@q; R3 3 Ω @q–@r; R4 4 Ω @r–@r',
      'B1 6 V + @p + R1 1 Ω; R2 2 Ω @p–@q; R3 3 Ω @q–@r; R4 4 Ω @r–@r',
    ],
    ['leaves a supply alone', 'B1 6 V', 'B1 6 V'],
  ];
  for (const [law, line, written] of forms) {
    test(law, () => {
      const circuit = parseCircuit(line);
      assert.equal(formatCircuit(circuit), written);
      sameCircuit(parseCircuit(written), circuit, written);
    });
  }

  test('of a circuit whose brackets are too deep to be read is placed', () => {
    const ladder = (rungs: number): Circuit => {
      const resistor = (id: string, from: number, to: number): object => ({
        ...{ id, kind: 'resistor', resistance: 1 },
        ...{ from: `${from}`, to: `${to}` },
      });
      const components = Array.from({ length: rungs }, (_, rung) => [
        resistor(`R${rung}a`, rung, rung + 1),
        resistor(`R${rung}b`, rung + 1, -1),
      ]).flat();
      const cell = { id: 'B1', kind: 'supply', emf: 6, from: '0', to: '-1' };
      return circuitFrom({ version: 1, components: [cell, ...components] });
    };
    for (const rungs of [2, 30, 31, 32, 33, 34, 200]) {
      const written = formatCircuit(ladder(rungs));
      assert.equal(written.includes('@'), rungs > 32, `${rungs}`);
      sameCircuit(parseCircuit(written), ladder(rungs), `${rungs} rungs`);
    }
  });

  test('follows a value that is set', () => {
    const circuit = withValue(parseCircuit('B1 6 V + R1 [2..40] 8.0 kΩ'), 'R1', 9000);
    assert.equal(formatCircuit(circuit), 'B1 6 V + R1 [2..40] 9.0 kΩ');
  });

  test('follows a component that is broken, bridged and mended', () => {
    const quay = parseCircuit('B1 6 V r 0.5 Ω + L1 8 Ω');
    const dim = withValue(withValue(quay, 'L1', 'broken'), 'B1', '9 r 2 bridged');
    assert.equal(formatCircuit(dim), 'B1 9 V r 2.0 Ω bridged + L1 8 Ω broken');
    assert.equal(formatCircuit(withValue(dim, 'L1', 'intact')), 'B1 9 V r 2.0 Ω bridged + L1 8 Ω');
  });

  test('gives nodes of any name a junction’s name', () => {
    const joined = [
      ['a', 'node 1'],
      ['node 1', '@x'],
      ['@x', 'a'],
      ['node 1', 'loose'],
    ].map(([from, to], index) => ({ id: `R${index + 1}`, kind: 'resistor', from, to, resistance: index }));
    const circuit = circuitFrom({ version: 1, components: joined, terminals: ['node 1', '@x'] });
    assert.equal(
      formatCircuit(circuit),
      'R1 0 Ω @a–@b; R2 1 Ω @b–@c; R3 2 Ω @c–@a; R4 3 Ω @b–@loose; ends @b–@c',
    );
  });
});
