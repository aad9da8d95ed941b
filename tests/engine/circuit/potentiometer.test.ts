import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  circuitFrom,
  isTrack,
  positions,
  settingOf,
  twinOf,
  withValue,
  wrongTwins,
  type Circuit,
  type Setting,
} from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';

/** The dimmer of the lighthouse's lamp. */
const dimmer = parseCircuit(
  'B1 6 V + potentiometer R1b 70 Ω + (potentiometer R1a [0..100 step 1] 30 Ω 2 W ∥ L1 6 V 3 W)',
);
const states = (circuit: Circuit): string =>
  circuit.components
    .filter(isTrack)
    .map((each) => settingOf(each))
    .join(' ');
const refused = (id: string, value: Setting, of = dimmer): string => {
  try {
    return states(withValue(of, id, value));
  } catch (error) {
    return (error as Error).message;
  }
};

describe('a potentiometer', () => {
  it('has one contact: what one part gains the other loses, whichever is set', () => {
    assert.equal(states(dimmer), '70 30');
    assert.equal(states(withValue(dimmer, 'R1a', '45')), '55 45');
    assert.equal(states(withValue(dimmer, 'R1b', 12)), '12 88');
    assert.equal(states(withValue(dimmer, 'R1a', 0)), '100 0');
    assert.equal(
      states(withValue(withValue(dimmer, 'R1b', '0 broken'), 'R1a', 'bridged')),
      '0 broken 100 bridged',
    );
  });

  it('keeps its sum and its other components, wherever it is slid again and again', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom('R1a', 'R1b'), fc.nat(100)), { minLength: 1 }),
        (slides) => {
          const end = slides.reduce((now, [id, ohms]) => withValue(now, id, ohms), dimmer);
          const [id = '', ohms = 0] = slides.at(-1) ?? [];
          for (const each of end.components.filter(isTrack))
            assert.equal(settingOf(each), `${each.id === id ? ohms : 100 - ohms}`);
          assert.equal(end.components.at(-1), dimmer.components.at(-1));
          assert.deepEqual(wrongTwins(end.components), []);
        },
      ),
    );
  });

  it('goes no further than its ends, its range and its steps, with a range or without', () => {
    assert.match(refused('R1a', 101), /^R1a: 101.Ω is outside 0.Ω to 100.Ω\.$/);
    assert.match(refused('R1a', -1), /^R1a: This must be 0 or more/);
    assert.match(refused('R1b', '30.5'), /^R1b: 30\.5.Ω is not one of the settings/);
    const fixed = parseCircuit('B1 6 V + potentiometer R1a 30 Ω + potentiometer R1b 70 Ω');
    assert.equal(refused('R1a', '1/3', fixed), '1/3 299/3');
    assert.match(refused('R1a', '100.5', fixed), /^R1a: 100\.5.Ω is outside 0.Ω to 100.Ω\.$/);
    const stops = parseCircuit('B1 6 V + potentiometer R1a [10..80] 30 Ω + potentiometer R1b 70 Ω');
    assert.match(refused('R1b', 95, stops), /^R1b: 95.Ω is outside 20.Ω to 90.Ω\.$/);
    assert.equal(refused('R1b', 90, stops), '10 90');
  });

  it('states its range and its rating once, and both its parts have them', () => {
    const [, second, first] = dimmer.components;
    assert.ok(first && second && isTrack(first) && isTrack(second));
    assert.equal(second.ratedPower?.value.valueOf(), 2);
    for (const range of [first.range, second.range])
      assert.deepEqual([range?.min.value.valueOf(), range?.max.value.valueOf()], [0, 100]);
  });

  it('stands at either end among the positions of a circuit', () => {
    assert.deepEqual(positions(dimmer).map(states), ['70 30', '0 100', '100 0']);
  });

  const part = (id: string, from: string, to: string, more: object = {}): object => ({
    ...{ id, kind: 'potentiometer', from, to, resistance: 5, ...more },
  });
  const refusal = (...parts: object[]): unknown => {
    const supply = { id: 'B1', kind: 'supply', from: 'p', to: 'n', emf: 6 };
    try {
      return circuitFrom({ version: 1, components: [supply, ...parts] });
    } catch (error) {
      const { code, path } = error as { code: string; path: string };
      return `${code} at ${path}`;
    }
  };
  const range = (min: number, max: number): object => ({ range: { min, max, step: 1 } });

  it('has two parts that meet, of some resistance, with a range and a rating that fit, or is refused', () => {
    const [one, other] = [part('R1a', 'p', 'q'), part('R1b', 'q', 'n')];
    assert.equal(refusal(one), 'part missing at components[1]');
    assert.equal(refusal(part('R1', 'p', 'q')), 'part missing at components[1]');
    assert.equal(refusal(one, { ...other, kind: 'resistor' }), 'part missing at components[1]');
    assert.equal(
      refusal({ id: 'R1a', kind: 'changeover', from: 'p', to: 'q' }, other),
      'contact missing at components[1]',
    );
    assert.equal(refusal(one, part('R1b', 'r', 'n')), 'parts apart at components[1]');
    const none = { resistance: 0 };
    assert.equal(
      refusal(part('R1a', 'p', 'q', none), part('R1b', 'q', 'n', none)),
      'track without resistance at components[1]',
    );
    assert.equal(typeof refusal(part('R1a', 'p', 'q', none), other), 'object');
    assert.equal(refusal(one, part('R1b', 'q', 'n', range(0, 11))), 'out of range at components[2]');
    assert.equal(
      refusal(part('R1a', 'p', 'q', { range: { min: 1, max: 10, scale: 'log' } }), other),
      'scale of a track at components[1]',
    );
    assert.equal(
      refusal(part('R1a', 'p', 'q', range(2, 10)), part('R1b', 'q', 'n', range(0, 10))),
      'parts at odds at components[1]',
    );
    assert.equal(
      typeof refusal(part('R1a', 'p', 'q', range(2, 10)), part('R1b', 'q', 'n', range(0, 8))),
      'object',
    );
    assert.equal(
      refusal(part('R1a', 'p', 'q', { ratedPower: 1 }), part('R1b', 'q', 'n', { ratedPower: 2 })),
      'parts at odds at components[1]',
    );
    assert.equal(refusal(part('R1a', 'p', 'q', { tolerance: 5 }), other), 'unknown field at components[1]');
  });

  it('is told from its label which the other part is', () => {
    assert.deepEqual(['R1a', 'R1b', 'Ra', 'R1', 'R1c'].map(twinOf), ['R1b', 'R1a', 'Rb', '', '']);
  });
});
