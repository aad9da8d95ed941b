// The characteristics against what is published. Where a value is from memory it is said.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { hasCurve } from '../../../src/engine/circuit/index.ts';
import { curveOf, parseCircuit, solve, type Curve } from '../../../src/engine/index.ts';

function curve(text: string): Curve {
  const [component] = parseCircuit(text).components;
  assert.ok(component && hasCurve(component));
  return curveOf(component);
}

/** The power of its argument with which a function grows at a place: d ln f / d ln x. */
const exponent = (f: (x: number) => number, x: number): number =>
  Math.log(f(x * 1.0001) / f(x / 1.0001)) / Math.log(1.0001 ** 2);

const about = (found: number, wanted: number, share: number, what = ''): void =>
  assert.ok(Math.abs(found / wanted - 1) <= share, `${what}: ${found}, published ${wanted}`);

describe('a filament lamp', () => {
  const lamp = curve('L1 6 V 0.5 A filament');
  const current = (volts: number): number => lamp(volts).current;
  const power = (volts: number): number => volts * current(volts);
  const ohms = (volts: number): number => volts / current(volts);

  // D. G. Fink, H. W. Beaty, Standard Handbook for Electrical Engineers, 11th ed., p. 22-8, as quoted by others.
  it('near its rating has the re-rating exponents of the handbook: I as V^0.55, P as V^1.55, R as V^0.45', () => {
    about(exponent(current, 6), 0.55, 0.001, 'current');
    about(exponent(power, 6), 1.55, 0.001, 'power');
    about(exponent(ohms, 6), 0.45, 0.001, 'resistance');
  });

  it('from half its voltage to a fifth above has an exponent of 0.5 to 0.6 (the range that lamp makers state, common practice)', () => {
    for (const share of [0.5, 0.7, 0.9, 1, 1.1, 1.2]) {
      const found = exponent(current, 6 * share);
      assert.ok(found > 0.5 && found < 0.6, `${share}: ${found}`);
    }
  });

  // Field Guide to Illumination (SPIE, 2007), stated to within 5 %.
  it('has the exponents of tungsten halogen lamps, to the 5 % to which they are stated: V as I^1.9, P as I^2.9', () => {
    about(1 / exponent(current, 6), 1.9, 0.05, 'p.d.');
    about(exponent(power, 6) / exponent(current, 6), 2.9, 0.05, 'power');
  });

  /**
   * Tungsten: kelvins, micro-ohm centimetres (H. A. Jones, I. Langmuir, General Electric Review 30 (1927) 310; from memory), and its
   * total emissivity (as handbooks print it; from memory).
   */
  const tungsten = [
    [1000, 24.93, 0.114],
    [1500, 40.36, 0.192],
    [2000, 56.67, 0.26],
    [2500, 73.91, 0.303],
    [3000, 92.04, 0.334],
  ] as const;
  const [hot] = tungsten.filter(([kelvins]) => kelvins === 2500);

  it('is within 8 % of a tungsten wire that loses by radiation all that it takes (J. Stefan 1879), at 2500 K where it is rated', () => {
    assert.ok(hot);
    const radiated = ([kelvins, , emissivity]: readonly [number, number, number]): number =>
      emissivity * kelvins ** 4;
    for (const each of tungsten) {
      // P = V I = ε σ A T⁴ and R = V/I = ρ l/A: the p.d. is √(P R), the current √(P/R).
      const [powers, resistances] = [radiated(each) / radiated(hot), each[1] / hot[1]];
      const [volts, amperes] = [Math.sqrt(powers * resistances), Math.sqrt(powers / resistances)];
      about(current(6 * volts), 0.5 * amperes, 0.08, `${each[0]} K, ${(6 * volts).toFixed(2)} V`);
    }
  });

  it('has cold a tenth of its resistance, where tungsten at 300 K has a thirteenth of that at 2500 K (5.65 µΩ cm, same table)', () => {
    assert.ok(hot);
    const share = 1 / lamp(0).slope / ohms(6);
    about(share, 0.1, 1e-9);
    assert.ok(share > 5.65 / hot[1] && share < 1.4 * (5.65 / hot[1]));
  });
});

describe('a silicon diode', () => {
  const diode = curve('D1');

  // What a maker publishes of the small-signal diode 1N4148 (from memory): saturation current 2.52 nA, 0.568 Ω in series, n = 1.752.
  const published = (amperes: number): number =>
    1.752 * 0.025693 * Math.log1p(amperes / 2.52e-9) + 0.568 * amperes;

  it('is within 50 mV of a common small diode from 0.1 mA to 20 mA', () => {
    for (const amperes of [1e-4, 1e-3, 5e-3, 1e-2, 2e-2]) {
      // The p.d. at which ours carries as much, by halving.
      let [low, high] = [0, 1];
      for (let step = 0; step < 50; step++) {
        const middle = (low + high) / 2;
        if (diode(middle).current < amperes) low = middle;
        else high = middle;
      }
      assert.ok(Math.abs(low - published(amperes)) < 0.05, `${amperes} A: ${low}, ${published(amperes)}`);
    }
  });

  // W. Shockley 1949; kT/q is 25.7 mV at 25 °C (any handbook).
  it('rises by a decade for every 59 mV to 119 mV (n from 1 to 2), while its resistance in series is small', () => {
    for (const volts of [0.25, 0.35, 0.45]) {
      const decade = (Math.log(10) * diode(volts).current) / diode(volts).slope;
      assert.ok(decade > 0.059 && decade < 0.119, `${volts}: ${decade}`);
    }
  });

  // Lessons In Electric Circuits, Volume III (T. R. Kuphaldt), "Diodes and rectifiers": 0.7 V, nearly whatever the current.
  it('drops 0.7 V, nearly whatever the current: 0.57 V to 0.8 V from 2 mA to 20 mA', () => {
    for (const ohms of [200, 500, 1000, 2000]) {
      const volts = solve(parseCircuit(`B1 5 V + R1 ${ohms} Ω + D1`)).voltage('D1') ?? NaN;
      assert.ok(volts > 0.57 && volts < 0.8, `${ohms}: ${volts}`);
    }
  });
});

describe('an LED', () => {
  // Lessons In Electric Circuits, Volume III (T. R. Kuphaldt): 6 V, 1.6 V and 20 mA want 220 Ω, in which 88 mW are lost.
  it('has the current and the loss of the worked example', () => {
    const solution = solve(parseCircuit('B1 6 V + R1 220 Ω + LED1 1.6 V 20 mA'));
    about(solution.current('LED1') ?? NaN, 0.02, 1e-6);
    about(solution.power('R1') ?? NaN, 0.088, 1e-6);
  });

  it('of each colour carries next to nothing at half its forward p.d. (red 1.8 V, green 2.1 V, blue 3.2 V: tables of parts)', () => {
    for (const volts of [1.8, 2.1, 3.2])
      assert.ok(curve(`LED1 ${volts} V 20 mA`)(volts / 2).current < 1e-4 * 0.02, `${volts}`);
  });
});
