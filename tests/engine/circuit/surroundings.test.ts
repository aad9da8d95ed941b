import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  CircuitFormatError,
  circuitFrom,
  circuitToJSON,
  feltBy,
  isSurrounding,
  lastSetting,
  nearestSetting,
  settingAt,
  surroundingNames,
  surroundingOf,
  surroundingRanges,
  surroundingsSince,
  withValue,
  type Circuit,
  type Setting,
} from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { Fraction, writeQuantity } from '../../../src/engine/quantity/index.ts';

const quay = parseCircuit('B1 6 V + T1 10 kΩ + LDR1 8 kΩ + R1 1 kΩ');
const tenths = (min: number, max: number) =>
  fc.integer({ min: 10 * min, max: 10 * max }).map((tenth) => `${tenth}/10`);
const celsius = tenths(-40, 125);
const lux = fc.integer({ min: 1, max: 1_000_000 }).map((tenth) => `${tenth}/10`);
const text = (circuit: Circuit): readonly string[] =>
  surroundingNames.map((name) => writeQuantity(surroundingOf(circuit, name)).text.replace(/\s/u, ' '));

/** The whole sentence with which a setting is refused, and the place it names. */
function refused(name: string, setting: Setting): readonly [string, string] {
  try {
    withValue(quay, name, setting);
  } catch (error) {
    assert.ok(error instanceof CircuitFormatError);
    return [error.path, error.message.replace(/[\u202f\u00a0]/gu, ' ')];
  }
  return ['', 'accepted'];
}

describe('where a circuit stands', () => {
  it('is at 25 °C, at which thermistors are rated (IEC 60539-1, from memory), and in 10 lx, as LDRs are, unless it says so', () => {
    assert.deepEqual(text(quay), ['25 °C', '10 lx']);
    assert.equal(quay.surroundings, undefined);
  });

  it('is what it is set to, exactly; the other of the two stays, and so does every component', () => {
    fc.assert(
      fc.property(celsius, lux, (warm, light) => {
        const there = withValue(withValue(quay, 'temperature', warm), 'light', light);
        assert.ok(surroundingOf(there, 'temperature').value.equals(warm));
        assert.ok(surroundingOf(there, 'light').value.equals(light));
        assert.equal(there.components, quay.components);
        const back = withValue(there, 'temperature', 25);
        assert.ok(surroundingOf(back, 'light').value.equals(light));
        assert.ok(surroundingOf(back, 'temperature').value.equals(25));
      }),
    );
  });

  it('takes a number, an exact text or a fraction alike', () => {
    for (const warm of [12.5, '12.5', '25/2', new Fraction(25, 2)])
      assert.ok(surroundingOf(withValue(quay, 'temperature', warm), 'temperature').value.equals('25/2'));
  });

  it('is the same circuit where nothing changes', () => {
    fc.assert(
      fc.property(celsius, lux, (warm, light) => {
        const there = withValue(withValue(quay, 'temperature', warm), 'light', light);
        assert.equal(withValue(there, 'temperature', warm), there);
        assert.equal(withValue(there, 'light', light), there);
      }),
    );
  });

  it('goes out as JSON and comes back, each value an exact text', () => {
    fc.assert(
      fc.property(celsius, lux, (warm, light) => {
        const there = withValue(withValue(quay, 'temperature', warm), 'light', light);
        const json: unknown = JSON.parse(JSON.stringify(circuitToJSON(there)));
        assert.deepEqual(circuitToJSON(circuitFrom(json)), circuitToJSON(there));
        assert.deepEqual(surroundingsSince(circuitFrom(json), there), []);
      }),
    );
    const { surroundings } = circuitToJSON(withValue(quay, 'temperature', '-1/3'));
    assert.deepEqual(surroundings, { temperature: '-1/3' });
  });

  it('is told where it differs from the start, by name, and nothing else', () => {
    const cold = withValue(quay, 'temperature', '-5.5');
    assert.deepEqual(surroundingsSince(quay, quay), []);
    assert.deepEqual(surroundingsSince(cold, quay), [['temperature', '-5.5']]);
    assert.deepEqual(surroundingsSince(quay, cold), [['temperature', '25']]);
    assert.deepEqual(surroundingsSince(withValue(cold, 'light', 200), quay), [
      ['temperature', '-5.5'],
      ['light', '200'],
    ]);
    assert.deepEqual(surroundingsSince(withValue(cold, 'light', 200), cold), [['light', '200']]);
  });

  for (const [line, felt] of [
    ['B1 6 V + R1 5 Ω', []],
    ['B1 6 V + T1 10 kΩ', ['temperature']],
    ['B1 6 V + LDR1 8 kΩ', ['light']],
    ['B1 6 V + (LDR1 8 kΩ ∥ T1 10 kΩ ∥ LDR2 8 kΩ)', ['temperature', 'light']],
    ['B1 6 V + L1 6 V 0.5 A filament', []],
  ] as const)
    it(`${line} feels ${felt.join(' and ') || 'nothing of it'}`, () => {
      assert.deepEqual(feltBy(parseCircuit(line)), felt);
    });

  it('has two names, which no other word is', () => {
    assert.deepEqual([...surroundingNames].sort(), Object.keys(surroundingRanges).sort());
    for (const name of surroundingNames) assert.ok(isSurrounding(name));
    for (const name of ['', 'Light', 'heat', 'toString', 'constructor', 'R1'])
      assert.ok(!isSurrounding(name), name);
  });

  it('may be as cold, hot, dark and light as sensors are made for, and no more', () => {
    for (const name of surroundingNames) {
      const { min, max } = surroundingRanges[name];
      for (const end of [min, max])
        assert.ok(surroundingOf(withValue(quay, name, end.value), name).value.equals(end.value));
      for (const [end, by] of [
        [min.value, '-1/100'],
        [max.value, '1/100'],
      ] as const) {
        const [path, sentence] = refused(name, end.add(by));
        assert.equal(path, name);
        assert.match(sentence, /outside/u);
      }
    }
  });

  it('is no word and no letter: a sentence says so, and of what', () => {
    assert.deepEqual(refused('temperature', 'warm'), [
      'temperature',
      'temperature: "warm" is not a number that can be read; write 4.7 or 1/3.',
    ]);
    assert.equal(refused('light', '1/0')[0], 'light');
    assert.match(refused('light', 'x'.repeat(99))[1], /^light: "x{40}…"/u);
    assert.deepEqual(refused('light', true), [
      'light',
      'light: "true" is not a number that can be read; write 4.7 or 1/3.',
    ]);
  });

  for (const [what, surroundings, path] of [
    ['a word for a number', { temperature: 'cold' }, 'surroundings.temperature'],
    ['a temperature below any', { temperature: -300 }, 'surroundings.temperature'],
    ['the light of the sun’s surface', { light: 1e9 }, 'surroundings.light'],
    ['a name with a slip', { lihgt: 10 }, 'surroundings'],
    ['a number alone', 25, 'surroundings'],
  ] as const)
    it(`is refused in JSON where it stands: ${what}`, () => {
      assert.throws(() => circuitFrom({ ...circuitToJSON(quay), surroundings }), { path });
    });

  it('is no part of a circuit whose JSON says nothing of it', () => {
    assert.equal(circuitFrom({ ...circuitToJSON(quay), surroundings: {} }).surroundings, undefined);
  });

  it('is set by a slider in whole degrees, and through 24 lights in ten times the light', () => {
    const { temperature, light } = surroundingRanges;
    assert.equal(lastSetting(temperature), 125 + 40);
    assert.equal(lastSetting(light), 24 * 6);
    for (let at = 0; at + 24 <= lastSetting(light); at++) {
      assert.ok(settingAt(light, at + 24).equals(settingAt(light, at).mul(10)), `${at}`);
      assert.equal(nearestSetting(light, settingAt(light, at)), at);
    }
  });
});
