import { isOwn, type Circuit } from '../circuit/index.ts';
import { readQuantity } from '../notation/index.ts';
import { exponentOf, fixed, type Fraction } from '../quantity/index.ts';
import type { Question } from './explain.ts';
import { unitOf } from './write.ts';

/** Quantities in units that no board shows: a time, an energy, a charge. */
const others = /^([-−]?\d+(?:[.,]\d+)?)\s*[sJC]?$/;

/** A value as it was written, with its decimals, in the unit without a prefix; undefined where it cannot be read. */
function valueOf(name: string, text: string): string | undefined {
  const unit = unitOf(name);
  if (!unit) return others.exec(text)?.[1]?.replace(',', '.').replace('−', '-');
  const read = readQuantity(text, unit);
  if ('code' in read) return undefined;
  const { value, prefix, decimals } = read;
  if (decimals === undefined) return value.toFraction();
  return fixed(value, Math.max(0, decimals - exponentOf(prefix))).replace('−', '-');
}

/** What a circuit keeps from the pupil is not given. */
const isKept = ({ components }: Circuit, name: string): boolean =>
  components.some((each) => each.hidden && isOwn(each, name));

/**
 * Reads what is given: `I_R1 = 0.5 A; R_R1` is a current as it is written, and a resistance as `quantity` has it. Nothing at all
 * stands for what the circuit's line states; the first piece that cannot be read is given back.
 */
export function readGiven(
  circuit: Circuit,
  quantity: (name: string) => Fraction | number | undefined,
  text: string,
): { readonly given?: NonNullable<Question['given']>; readonly unread?: string } {
  const pieces = text.split(/[;\n]/).filter((piece) => piece.trim());
  if (pieces.length === 0) return {};
  const given: Record<string, Fraction | number | string> = {};
  for (const piece of pieces) {
    const [word = '', written] = piece.split('=').map((side) => side.trim());
    const name = word.replace(/^U_/, 'V_');
    const own = isKept(circuit, name) ? undefined : quantity(name);
    const value = written === undefined ? own : valueOf(name, written);
    if (!/^(\p{L}+_[^_]|t$)/u.test(name) || value === undefined) return { unread: piece.trim() };
    given[name] = value;
  }
  return { given };
}
