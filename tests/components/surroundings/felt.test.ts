import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { parseCircuit, say } from '../../../src/engine/index.ts';
import { feltIn, type Felt } from '../../../src/components/surroundings/felt.ts';
import { settingsOf, textOf } from '../../../src/components/surroundings/value-text.ts';

const fog = 'B1 5 V + R1 10 kΩ + LDR1 8 kΩ';
const weather = 'B1 6 V + T1 10 kΩ + LDR1 8 kΩ + A1; at 5 °C; at 200 lx';

/** What is felt, as a text; or the sentence why nothing is. */
function felt(line: string, of = ''): string {
  const found = feltIn(parseCircuit(line), of);
  return 'code' in found ? say(found) : textOf(found);
}
function feltOf(line: string): Felt {
  const found = feltIn(parseCircuit(line), '');
  if ('code' in found) throw new Error(found.code);
  return found;
}

describe('what the sensors of a circuit feel', () => {
  it('is light or temperature, or both, in one order, as the circuit says or as it is usually', () => {
    expect(felt(fog)).to.equal('light 10');
    expect(felt('B1 5 V + R1 10 kΩ + T1 8 kΩ')).to.equal('temperature 25');
    expect(felt(weather)).to.equal('temperature 5 light 200');
    expect(felt('B1 6 V + LDR1 8 kΩ + T1 10 kΩ; at 200 lx')).to.equal('temperature 25 light 200');
  });

  it('is what the page names of it', () => {
    expect(felt(weather, 'light')).to.equal('light 200');
    expect(felt(weather, 'temperature')).to.equal('temperature 5');
  });

  it('is a sentence where nothing feels that, or where it is no part of the surroundings', () => {
    expect(felt(fog, 'temperature')).to.contain('temperature').and.to.not.contain('light');
    expect(felt('B1 5 V + R1 10 kΩ')).to.contain('temperature').and.to.contain('light');
    expect(felt(fog, 'ligth')).to.contain('did you mean light');
  });
});

describe('what surrounds a circuit in one text', () => {
  it('is read back, all of it or a part, with any blanks', () => {
    for (const [text, settings] of [
      ['temperature 5 light 200', { temperature: '5', light: '200' }],
      ['light 3', { light: '3' }],
      ['  light   1/3\n', { light: '1/3' }],
      ['', {}],
      ['temperature', { temperature: '' }],
    ] as const)
      expect(settingsOf(feltOf(weather), text), text).to.deep.equal(settings);
  });

  it('is what it was written as, whatever the values', () => {
    const value = fc.integer({ min: -20, max: 1000 });
    fc.assert(
      fc.property(value, value, (degrees, lux) => {
        const text = `temperature ${degrees} light ${lux}`;
        expect(settingsOf(feltOf(weather), text)).to.deep.equal({
          temperature: `${degrees}`,
          light: `${lux}`,
        });
      }),
    );
  });

  it('is refused where a word of it names nothing that is felt, whatever comes after', () => {
    for (const text of ['wind 3', 'temperature 3 wind 4', '5', 'Light 3'])
      expect(() => settingsOf(feltOf(weather), text), text).to.throw(/is not a setting of the surroundings/);
    expect(() => settingsOf(feltOf(fog), 'temperature 3'), 'only light').to.throw('temperature');
  });
});
