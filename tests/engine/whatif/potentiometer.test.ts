import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { isTrack, withValue, type Circuit } from '../../../src/engine/circuit/index.ts';
import { testClaim } from '../../../src/engine/claims/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { solve, solveExact } from '../../../src/engine/solve/index.ts';
import { say } from '../../../src/engine/language.ts';
import { sensitivity, sweep } from '../../../src/engine/whatif/index.ts';
import { wiperLines } from '../schematic/random-wipers.ts';

const divider = parseCircuit('B1 6 V + potentiometer R1b 70 Ω + (potentiometer R1a 30 Ω ∥ V1)');
const dimmer = parseCircuit(
  'B1 6 V + potentiometer R1b 70 Ω + (potentiometer R1a [0..100 step 1] 30 Ω ∥ L1 6 V 3 W)',
);

/** The circuit with contacts that stop anywhere. */
const unbound = (circuit: Circuit): Circuit => ({
  ...circuit,
  components: circuit.components.map((each) => {
    if (!isTrack(each)) return each;
    const { id, kind, from, to, resistance } = each;
    return { id, kind, from, to, resistance };
  }),
});

describe('the sensitivity to a potentiometer', () => {
  it('without a load is that of a straight line: E over the whole track, and the current stays', () => {
    const found = sensitivity(divider, 'V_V1', 'R1a');
    assert.deepEqual([found.value.toFraction(), found.direction], ['3/50', 'rises']);
    const other = sensitivity(divider, 'V_V1', 'R1b');
    assert.deepEqual([other.value.toFraction(), other.direction], ['-3/50', 'falls']);
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
        const free = unbound(circuit);
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

const reasons = (line: string, quantity: string, what: string): string[] =>
  sensitivity(parseCircuit(line), quantity, what).reasons.map((link) => say(link));

describe('the chain of reasons of a potentiometer', () => {
  const loaded = 'B1 6 V + potentiometer R1b 70 Ω + (potentiometer R1a 30 Ω ∥ L1 6 V 3 W)';

  it('goes up from both its parts and down to the quantity, and says which part would do otherwise', () => {
    assert.deepEqual(reasons(loaded, 'I_L1', 'R1a'), [
      'The contact slides: the resistance of R1a rises, and that of R1b falls by as much.',
      'So the resistance of R1a and L1 together rises.',
      'So the current through B1 rises, though R1a alone would make it fall.',
      'So the p.d. across R1b falls.',
      'So the p.d. across R1a and L1 together rises.',
      'So the current through L1 rises.',
    ]);
    assert.deepEqual(reasons(loaded, 'V_R1b', 'R1b').slice(3), [
      'So the p.d. across R1a and L1 together falls.',
      'So the p.d. across R1b rises.',
    ]);
    const unloaded = 'B1 6 V + potentiometer R1b 70 Ω + (potentiometer R1a 30 Ω ∥ V1)';
    assert.equal(
      reasons(unloaded, 'I_B1', 'R1a').at(-1),
      'But the current through B1 stays the same, though R1a or R1b alone would make it change.',
    );
  });

  it('says where the quantity turns round on the way of the contact', () => {
    // In the lamp’s dimmer the current through the track below the contact is least in between.
    assert.deepEqual(reasons(loaded, 'I_R1a', 'R1a').slice(-2), [
      'So the current through R1a falls, though R1b alone would make it rise.',
      'But at some other places of the contact it rises.',
    ]);
    const sides = (a: number, range: string): string =>
      `B1 6 V + ((potentiometer R1a ${range} ${a} Ω + R2 10 Ω) ∥ (potentiometer R1b ${80 - a} Ω + R3 20 Ω))`;
    const alike = 'though R1a or R1b alone would make it change.';
    assert.deepEqual(reasons(sides(45, ''), 'I_B1', 'R1a').slice(-2), [
      `So the current through B1 stays the same, ${alike}`,
      'But at some other places of the contact it falls or rises.',
    ]);
    assert.deepEqual(reasons(sides(30, '[0..40 step 1]'), 'I_B1', 'R1a').slice(-1), [
      'So the current through B1 falls, though R1b alone would make it rise.',
    ]);
  });

  it('is that of the one part where the other one carries nothing, and none where neither does', () => {
    const rheostat = (more: string): string =>
      `B1 6 V + (potentiometer R1b 70 Ω ∥ W1) + potentiometer R1a ${more} + L1 10 Ω`;
    for (const more of ['30 Ω', '0 Ω'])
      assert.deepEqual(reasons(rheostat(more), 'I_L1', 'R1b').slice(1), [
        'So the current through B1 rises.',
        'So the current through L1 rises.',
      ]);
    assert.deepEqual(reasons(rheostat('30 Ω broken'), 'I_L1', 'R1b'), []);
    const half = 'B1 6 V + potentiometer R1a 30 Ω + (L1 10 Ω ∥ potentiometer R1b 70 Ω broken)';
    assert.deepEqual(reasons(half, 'I_L1', 'R1a').slice(-1), ['So the current through L1 falls.']);
  });

  it('says of every component what solving shows, here and, where both parts agree, all along the track', () => {
    let [alongs, turns] = [0, 0];
    fc.assert(
      fc.property(wiperLines, fc.nat(), fc.nat(), (line, pick, what) => {
        const circuit = parseCircuit(line);
        const tracks = circuit.components.filter(isTrack);
        const part = tracks[pick % tracks.length];
        const id = circuit.components[what % circuit.components.length]?.id ?? '';
        const name = `${what % 2 ? 'I' : 'V'}_${id}`;
        if (part?.range === undefined) return;
        const { reasons: all } = sensitivity(circuit, name, part.id);
        const reasons = all.filter(({ code }) => code !== 'counted the other way');
        const { min, max } = part.range;
        const free = unbound(circuit);
        const sizes = Array.from({ length: 17 }, (_, k) => {
          const ohms = min.value.add(max.value.sub(min.value).mul(k).div(16));
          return solveExact(withValue(free, part.id, ohms))
            .quantity(name)
            ?.abs();
        });
        const changes = sizes.slice(1).map((size, k) => {
          const before = sizes[k];
          return before && size ? size.compare(before) : 0;
        });
        const last = reasons.findLast(({ code }) => code !== 'elsewhere along the track');
        if (!last || !('change' in last.data)) return;
        const { change, against } = last.data;
        const sign = { rises: 1, falls: -1, 'stays the same': 0 }[change];
        if (against.length === 0) {
          for (const each of changes) assert.ok(each * sign >= 0, `${line}: ${name} by ${part.id}`);
          alongs += 1;
        }
        const elsewhere = reasons.at(-1);
        if (elsewhere?.code !== 'elsewhere along the track') return;
        for (const other of elsewhere.data.changes)
          assert.ok(changes.includes(other === 'rises' ? 1 : -1), `${line}: ${name} by ${part.id}`);
        turns += 1;
      }),
      { numRuns: 100 },
    );
    assert.ok(alongs > 10 && turns > 0, `${alongs} ${turns}`);
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
