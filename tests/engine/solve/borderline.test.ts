import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { circuitFrom, type Circuit } from '../../../src/engine/circuit/index.ts';
import { solve, solveExact } from '../../../src/engine/solve/index.ts';
import { short } from './short.ts';

/** What is warned of, live and exactly. */
function cautions(circuit: Circuit): readonly string[] {
  const [exact, live] = [solveExact(circuit), solve(circuit)].map((solution) =>
    solution.cautions.map(({ code, ids }) => `${code}: ${ids.join(' ')}`),
  );
  assert.deepEqual(live, exact);
  return exact ?? [];
}

const rated = 'over its rating';
const low = 'not extra-low voltage';

/** A circuit just at a limit, and one just beyond it. */
const borders: readonly (readonly [what: string, at: string, beyond: string, caution: string])[] = [
  [
    'a resistor may take its rated power to the full',
    'B1 a g 6; R1 a g 12 3W',
    'B1 a g 6; R1 a g 12 2.999W',
    `${rated}: R1`,
  ],
  [
    'a resistor may carry a current that is its rated power',
    'I1 a g 2; R1 a g 5 20W',
    'I1 a g 2; R1 a g 5 19.99W',
    `${rated}: R1`,
  ],
  [
    'a lamp may take a fifth more than its rated power, 7.2 W in the place of 6 W (common practice)',
    'I1 a g 1.095; L1 a g 6V 6W',
    'I1 a g 1.096; L1 a g 6V 6W',
    `${rated}: L1`,
  ],
  [
    'a lamp’s rated power is its rated p.d. times its rated current',
    'I1 a g 1.095; R1 a b 1; L1 b g 6V 1A',
    'I1 a g 1.096; R1 a b 1; L1 b g 6V 1A',
    `${rated}: L1`,
  ],
  // IEC 60335-1 as taken over by IEC 62282-5-1:2012, 3.23: 60 V d.c.
  ['60 V is extra-low voltage', 'B1 a g 60; R1 a g 60', 'B1 a g 60.01; R1 a g 60', `${low}: B1`],
  [
    'so is what several cells give together',
    'B1 a b 30; B2 b g 30; R1 a g 60',
    'B1 a b 30; B2 b g 30.01; R1 a g 60',
    `${low}: B1 B2`,
  ],
  [
    'a supply turned round lowers the far end',
    'B1 g a 60; R1 a g 60',
    'B1 g a 60.01; R1 a g 60',
    `${low}: B1`,
  ],
  [
    'one end is as far above as the other is below',
    'B1 a g 30; B2 g b 30; R1 a b 60',
    'B1 a g 30; B2 g b 30.01; R1 a b 60',
    `${low}: B1 B2`,
  ],
  ['a constant current may drive 60 V', 'I1 a g 0.5; R1 a g 120', 'I1 a g 0.501; R1 a g 120', `${low}: I1`],
];

void describe('a caution begins just beyond its limit', () => {
  for (const [what, at, beyond, caution] of borders)
    void it(what, () => {
      assert.deepEqual(cautions(short(at)), []);
      assert.deepEqual(cautions(short(beyond)), [caution]);
    });

  void it('wherever the 0 V mark is', () => {
    for (const zero of ['a', 'b', 'c', 'g'])
      for (const [emf, expected] of [
        ['20', []],
        ['20.01', [`${low}: B1 B2 B3`]],
      ] as const) {
        const line = `B1 a b 20; B2 b c ${emf}; B3 c g 20; R1 a g 60`;
        assert.deepEqual(cautions({ ...short(line), zero }), expected, `${emf} V, 0 V at ${zero}`);
      }
  });

  void it('for each component by itself', () => {
    const line = 'B1 a g 6; R1 a g 12 3W; R2 a g 12 2W; R3 a g 12; L1 a g 4V 2W; L2 a g 6V 3W';
    assert.deepEqual(cautions(short(line)), [`${rated}: R2`, `${rated}: L1`]);
  });
});

/** A potentiometer of 100 Ω along which 0.25 W may be spread: sqrt(0.25/100) = 50 mA anywhere. */
function track(at: number, amperes: string, extra: Readonly<Record<string, unknown>> = {}): Circuit {
  const part = { kind: 'potentiometer', ratedPower: '0.25', ...extra };
  return circuitFrom({
    version: 1,
    components: [
      { id: 'I1', kind: 'source', from: 'p', to: 'g', current: amperes },
      { ...part, id: 'R1a', from: 'p', to: 'w', resistance: `${at}` },
      { ...part, id: 'R1b', from: 'w', to: 'g', resistance: `${100 - at}` },
    ],
  });
}

void describe('the track of a potentiometer', () => {
  const both = ['track overloaded: R1a', 'track overloaded: R1b'];
  const own = (circuit: Circuit): readonly string[] =>
    cautions(circuit).filter((one) => one.startsWith('track'));

  void it('may carry everywhere what heats it with its rated power from end to end', () => {
    for (const at of [1, 25, 50, 99]) {
      assert.deepEqual(own(track(at, '0.05')), [], `${at}`);
      assert.deepEqual(own(track(at, '-0.05')), [], `${at}`);
      assert.deepEqual(own(track(at, '0.0501')), both, `${at}`);
      assert.deepEqual(own(track(at, '-0.0501')), both, `${at}`);
    }
  });

  void it('with its contact at an end has one part only that could burn', () => {
    assert.deepEqual(own(track(0, '0.0501')), ['track overloaded: R1b']);
    assert.deepEqual(own(track(100, '0.0501')), ['track overloaded: R1a']);
  });

  void it('tells the most that it may carry, unless its values are hidden', () => {
    const data = (circuit: Circuit): unknown =>
      solveExact(circuit).cautions.find(({ code }) => code === 'track overloaded')?.data;
    const shown = { id: 'R1a', current: '0.0600\u202fA', most: '0.0500\u202fA', rating: '0.25\u202fW' };
    assert.deepEqual(data(track(50, '0.06')), shown);
    assert.deepEqual(data(track(50, '0.06', { hidden: true })), { ...shown, most: '?', rating: '?' });
  });
});

/** Faults with the supplies and what the current takes its way through. */
const paths: readonly (readonly [circuit: string, supplies: readonly string[], path: readonly string[]])[] = [
  ['B1 a g 6; W1 a g', ['B1'], ['W1']],
  ['B1 a g 6; S1 a b closed; A1 b g', ['B1'], ['S1', 'A1']],
  ['B1 a g 6; R1 a g 0', ['B1'], ['R1']],
  ['B1 a a 6; R1 a b 5', ['B1'], []],
  ['B1 a b 6; B2 b g 3; S1 a g closed', ['B1', 'B2'], ['S1']],
  ['B1 a g 6; B2 a g 0', ['B1'], ['B2']],
  ['B1 a g 6; R1 a g 5 bridged', ['B1'], ['R1']],
];

void describe('a short circuit', () => {
  for (const [circuit, supplies, path] of paths)
    void it(`of ${circuit} is ${supplies.join(' and ')} through ${path.join(', ') || 'nothing'}`, () => {
      const [fault, ...more] = solveExact(short(circuit)).faults;
      assert.equal(more.length, 0);
      assert.ok(fault?.code === 'short circuit');
      assert.deepEqual(fault.data.supplies, supplies);
      assert.deepEqual(new Set(fault.data.path.map((id) => id.replace(/\W.*/, ''))), new Set(path));
    });
});

/** How a current is shared between what has no resistance: what belongs together is told together, and nothing else. */
const shares: readonly (readonly [circuit: string, groups: readonly (readonly string[])[]])[] = [
  ['B1 a g 6; R1 a b 5; W1 b g; W2 b g', [['W1', 'W2']]],
  ['B1 a g 6; R1 a b 5; W1 b g; W2 b g; W3 b g', [['W1', 'W2', 'W3']]],
  [
    'B1 a g 6; R1 a b 5; W1 b c; W2 b c; R2 c d 5; S1 d g closed; A1 d g',
    [
      ['W1', 'W2'],
      ['S1', 'A1'],
    ],
  ],
  [
    'B1 a g 6; R1 a b 5; W1 b c; W2 c g; W3 b c; W4 c g',
    [
      ['W1', 'W3'],
      ['W2', 'W4'],
    ],
  ],
  ['B1 a g 6; R1 a b 5; W1 b c; W2 c g; W3 b g', [['W1', 'W2', 'W3']]],
  // Where no current enters, none circulates.
  ['B1 a g 6; R1 a g 5; W1 a b; W2 a b', []],
  ['B1 a g 6; R1 a b 5; R2 b g 5; W1 b c; W2 c d; W3 d b', []],
];

void describe('a share that nothing decides', () => {
  for (const [circuit, groups] of shares)
    void it(`of ${circuit} is told of ${groups.map((ids) => ids.join(' and ')).join('; ') || 'nothing'}`, () => {
      const { faults, status } = solveExact(short(circuit));
      assert.equal(status, groups.length > 0 ? 'faulty' : 'solved');
      assert.ok(faults.every(({ code }) => code === 'share undetermined'));
      const sorted = (lists: readonly (readonly string[])[]) =>
        lists.map((ids) => ids.toSorted().join()).toSorted();
      assert.deepEqual(sorted(faults.map(({ ids }) => ids)), sorted(groups));
    });
});
