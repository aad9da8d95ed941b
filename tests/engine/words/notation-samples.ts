import type { Catalogue } from '../../../src/engine/index.ts';
import type { MistakeData } from '../../../src/engine/notation/index.ts';

const about = (found: string, suggestion = '', rest = ''): Catalogue['expected'] => ({
  found,
  suggestion,
  about: rest,
});

/** What the sentences of a line’s mistakes are tried with. */
export const notationSamples: {
  readonly [Code in keyof MistakeData]: readonly Catalogue[Code][];
} = {
  'unexpected character': [about('$')],
  expected: [
    about(')', '', 'component'),
    about('Ω', '', 'number'),
    about('5', '', 'label'),
    about(']', '', 'dots'),
    about('', '', 'junction'),
    about('@q', '', 'dash'),
    about('', '', 'place'),
    about('5 V', '5 °C', 'surrounding'),
    about('6', '', 'percent'),
    about('@p', '', 'join'),
    about('R1', '', 'statement'),
  ],
  'write instead': [about('|', '∥')],
  'two readings': [about('1,000 Ω', '1000 Ω', '1.000 Ω')],
  'number too long': [about('1234567890123456789012345678901')],
  'zero below': [about('1/0')],
  'look-alike': [about('В1', 'B1')],
  'across several': [about('across', '@p–@q')],
  'space after label': [about('B16V', 'B1 6V')],
  'text too long': [about('', '', '20000')],
  'too deep': [about('(', '', '64')],
  'bracket alone': [about(')'), about('(')],
  'join missing': [about('R2', '+ R2', 'R1')],
  'dash in series': [about('-', '+')],
  'kind not understood': [about('D1', '', 'diode')],
  'kind missing': [about('X1', 'resistor X1')],
  'label reserved': [about('total')],
  'unit missing': [about('5', '5 Ω')],
  unsuitable: [about('5 V', '', 'R1')],
  'one too many': [about('8 Ω')],
  'value missing': [about('R1', 'R1 12 Ω'), about('B1', 'B1 6 V')],
  'range backwards': [about('[40..4]', '[4..40]')],
  'junction alone': [about('p')],
  'junction twice': [about('p')],
  'junction once': [about('p')],
  'same point': [about('p', '', 'q')],
  'placed in chain': [about('R1', '; R1 5 Ω @p–@q')],
  'across itself': [about('V1')],
  'ends missing': [about('', '; ends @a–@b')],
};
