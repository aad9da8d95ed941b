import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { preferred, preferredPlace } from '../../../src/engine/quantity/index.ts';

// IEC 60063:2015, quoted second-hand.
const e12 = [10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82];
const e24 = [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91];

void describe('preferred values', () => {
  void it('are those of IEC 60063 in every decade', () => {
    for (const [name, decade] of [
      ['E12', e12],
      ['E24', e24],
    ] as const) {
      for (let power = -3; power <= 6; power++) {
        const places = decade.map((_, index) => preferred(name, power * decade.length + index));
        assert.deepEqual(
          places.map(({ digits }) => digits),
          decade,
        );
        assert.ok(places.every((place) => place.power === power - 1));
      }
    }
  });

  void it('hold the smaller series: every other value of E24 is E12, and of E12 is E6 (IEC 60063:2015, second-hand)', () => {
    const digits = (name: 'E12' | 'E24', place: number): number => preferred(name, place).digits;
    const e6 = [10, 15, 22, 33, 47, 68];
    for (let place = 0; place < 12; place++) assert.equal(digits('E24', 2 * place), digits('E12', place));
    for (let place = 0; place < 6; place++) assert.equal(digits('E12', 2 * place), e6[place]);
  });

  void it('are the rounded steps of one ratio, but for eight that the standard departs in', () => {
    // That some depart is stated by makers' tables (seen); which do is computed.
    const rounded = e24.map((_, place) => Math.round(10 * 10 ** (place / 24)));
    const departing = rounded.filter((value, place) => preferred('E24', place).digits !== value);
    assert.deepEqual(departing, [26, 29, 32, 35, 38, 42, 46, 83]);
  });

  void it('are found from their value, and from any value up to the next', () => {
    for (const [name, decade] of [
      ['E12', e12],
      ['E24', e24],
    ] as const) {
      for (let place = -3 * decade.length; place < 6 * decade.length; place++) {
        const { digits, power } = preferred(name, place);
        assert.equal(preferredPlace(name, digits * 10 ** power), place);
        assert.equal(preferredPlace(name, digits * 10 ** power * 1.04), place);
      }
    }
  });
});
