import { circuitFrom, type Circuit } from '../../../src/engine/circuit/index.ts';

const kinds: Readonly<Record<string, string>> = {
  B: 'supply',
  I: 'source',
  R: 'resistor',
  L: 'lamp',
  S: 'switch',
  A: 'ammeter',
  V: 'voltmeter',
  W: 'wire',
};

/** What a value of a kind is the value of: its first, its second, or by its unit. */
function field(kind: string, value: string, place: number): readonly [string, unknown] {
  if (value === 'broken' || value === 'bridged') return ['condition', value];
  if (value === 'open' || value === 'closed') return ['closed', value === 'closed'];
  const unit = value.slice(-1);
  if (unit === 'V') return ['ratedVoltage', value.slice(0, -1)];
  if (unit === 'W') return ['ratedPower', value.slice(0, -1)];
  if (unit === 'A') return ['ratedCurrent', value.slice(0, -1)];
  if (kind === 'source') return ['current', value];
  return [kind === 'supply' ? (place === 0 ? 'emf' : 'internalResistance') : 'resistance', value];
}

/**
 * A circuit in short, for tables: components parted by semicolons, each an id, its two nodes and its values in SI units (a supply's
 * e.m.f. and resistance inside, or its constant current; ohms; ratings with their units; open or closed; broken or bridged). Terminals follow `ends`.
 */
export function short(text: string): Circuit {
  const words = text.split(';').map((one) => one.trim().split(' '));
  const ends = words.find(([first]) => first === 'ends');
  const components = words
    .filter((one) => one !== ends)
    .map(([id = '', from, to, ...values]) => {
      const kind = kinds[id.slice(0, 1)] ?? '';
      return { id, kind, from, to, ...Object.fromEntries(values.map((value, k) => field(kind, value, k))) };
    });
  return circuitFrom({ version: 1, components, ...(ends && { terminals: ends.slice(1) }) });
}
