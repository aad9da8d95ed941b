import { inUnit, type Prefix, type Quantity, type Unit } from '../quantity/index.ts';
import { mistake, type Wrong } from './mistake.ts';
import { bareText } from './quantity-text.ts';
import { tokenize } from './tokenize.ts';

const characterLimit = 100;

/**
 * Reads a value that somebody types: `20`, `20 Ω`, `4k7`, `0,45 A`, `1.2kΩ`, `-3 V`. A bare number has the unit and prefix
 * given. Gives what is wrong where it cannot be read.
 */
export function readQuantity(text: string, unit: Unit, prefix: Prefix = ''): Quantity | Wrong {
  if (text.length > characterLimit) return mistake('text too long', '', '', `${characterLimit}`);
  const tokens = tokenize(text);
  const negative = tokens[0]?.type === '–';
  const [token, after] = negative ? tokens.slice(1) : tokens;
  const wrong = tokens.find((each) => each.mistake)?.mistake;
  if (wrong) return wrong;
  const read =
    token?.type === 'number' && token.number ? inUnit(token.number, unit, prefix) : token?.quantity;
  if (!token || !read || after?.type !== 'end') {
    return mistake('expected', (read ? after : token)?.text, '', 'number');
  }
  if (read.unit !== unit) return mistake('write instead', token.text, `${bareText(read)} ${unit}`);
  return negative ? { ...read, value: read.value.neg() } : read;
}
