import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { combinations, dials, settingsOf, turned, unset } from '../../../src/engine/claims/dials.ts';
import { circuitToJSON } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';

/** Circuits with sliders for resistors, e.m.f.s and what is inside, and switches. */
const lines = fc
  .record({
    steps: fc.array(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 3 }),
    emf: fc.boolean(),
    inside: fc.boolean(),
    closed: fc.boolean(),
  })
  .map(({ steps, emf, inside, closed }) => {
    const sliders = steps.map((last, k) => `R${k + 1} [1..${last + 1} step 1] 1 Ω`);
    const supply = `B1 ${emf ? '[0..6 step 2] ' : ''}6 V${inside ? ' r [0..3 step 1] 1 Ω' : ''}`;
    return [supply, `S1 ${closed ? 'closed' : 'open'}`, ...sliders].join(' + ');
  });

describe('the dials of a circuit', () => {
  it('are its sliders and switches, each where it stands', () => {
    fc.assert(
      fc.property(lines, (line) => {
        const circuit = parseCircuit(line);
        const all = dials(circuit);
        assert.equal(all.length, (line.match(/\[/g) ?? []).length + 1);
        assert.equal(all.filter(({ isSlider }) => !isSlider).length, 1);
        for (const dial of all) {
          assert.ok(dial.now >= 0 && dial.now <= dial.last);
          const again = dial.turn(circuit, dial.now);
          assert.deepEqual(circuitToJSON(again), circuitToJSON(circuit), 'turned to where it stands');
        }
      }),
    );
  });

  it('turned, stand at the places that are asked, and the rest of the circuit is as it was', () => {
    fc.assert(
      fc.property(lines, fc.array(fc.nat(), { minLength: 6, maxLength: 6 }), (line, draws) => {
        const circuit = parseCircuit(line);
        const all = dials(circuit);
        const places = all.map(({ last }, k) => (draws[k] ?? 0) % (last + 1));
        const other = turned(circuit, all, places);
        assert.deepEqual(
          dials(other).map(({ now }) => now),
          places,
        );
        assert.equal(unset(other), unset(circuit));
      }),
    );
  });
});

describe('the settings of several dials', () => {
  it('are every one of them, each once, the present one first, where there are few', () => {
    fc.assert(
      fc.property(lines, (line) => {
        const all = dials(parseCircuit(line));
        const count = settingsOf(all);
        const found = combinations(all, count);
        assert.equal(found.length, count);
        assert.equal(new Set(found.map((places) => places.join())).size, count);
        assert.deepEqual(
          found[0],
          all.map(({ now }) => now),
        );
        for (const places of found)
          assert.ok(places.every((place, k) => place >= 0 && place <= (all[k]?.last ?? -1)));
      }),
    );
  });

  it('are the present one, corners and others spread evenly, where there are many: never more than may be, and always the same', () => {
    const all = dials(
      parseCircuit(
        'B1 [0..12 step 0.1] 6 V + R1 [1..100 step 1] 5 Ω + R2 [1..100 step 1] 12 Ω + R3 [1..100 step 1] 8 Ω',
      ),
    );
    const most = 4000;
    const found = combinations(all, most);
    assert.equal(found.length, most);
    assert.deepEqual(found, combinations(all, most));
    assert.deepEqual(
      found[0],
      all.map(({ now }) => now),
    );
    const keys = new Set(found.map((places) => places.join()));
    for (let corner = 0; corner < 16; corner++)
      assert.ok(
        keys.has(all.map(({ last }, k) => ((corner >> k) & 1 ? last : 0)).join()),
        `corner ${corner}`,
      );
    // In each tenth of each slider there is a tenth of them, within a quarter.
    all.forEach(({ last }, dial) => {
      const tenths = new Array<number>(10).fill(0);
      for (const places of found.slice(17)) {
        const tenth = Math.floor((10 * (places[dial] ?? 0)) / (last + 1));
        tenths[tenth] = (tenths[tenth] ?? 0) + 1;
      }
      for (const count of tenths)
        assert.ok(Math.abs(count / (most / 10) - 1) < 0.25, `${dial}: ${tenths.join()}`);
    });
  });
});
