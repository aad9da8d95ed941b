import type { Random } from './random.ts';

type Fields = Record<string, unknown>;

const nodeNames = [
  'a',
  'p',
  'node 1',
  '1',
  '2',
  '@x',
  'ä',
  '__proto__',
  'total',
  'R1',
  'x'.repeat(64),
  'a1',
  ' ',
];

function number(random: Random): unknown {
  const digits = 1 + random.below(999);
  return random.pick<unknown>([
    digits,
    digits / 8,
    `${digits}.0`,
    `0.${digits}0`,
    `${digits}/${1 + random.below(30)}`,
    `${digits}e-${random.below(31)}`,
    `${digits}e${random.below(31)}`,
    `${'9'.repeat(30)}.${'1'.repeat(30)}`,
    `${'1'.repeat(30)}/${'7'.repeat(30)}`,
    1e-9,
    1e21,
    0.1 + 0.2,
  ]);
}

function range(random: Random): Fields {
  const low = random.below(20);
  const value = low + random.below(20);
  const high = value + 1 + random.below(40);
  const min = random.pick([low, `${low}.0`]);
  return random.pick<Fields>([
    { resistance: value, range: { min, max: high } },
    { resistance: `${value}.50`, range: { min, max: `${high}.5`, step: '0.5' } },
    { resistance: `${value}/3`, range: { min: `${low}/3`, max: `${high}/3`, step: '1/3' } },
    { resistance: value + 1, range: { min: low + 1, max: high + 1, scale: 'log' } },
    { resistance: 47, range: { min: 10, max: '1000', scale: 'E12' } },
    { resistance: '4700', range: { min: 1, max: 1e6, scale: 'E24' } },
  ]);
}

function supply(random: Random): Fields {
  const low = random.below(20);
  const volts = low + random.below(20);
  const high = volts + 1 + random.below(20);
  return {
    ...random.pick<Fields>([
      { emf: volts, range: { min: -low, max: high } },
      { emf: `-${volts}.50`, range: { min: `-${high}.5`, max: `-${low}.0`, step: '0.5' } },
      { emf: volts, range: { min: 0, max: high, step: '1/3' } },
      { emf: volts, cells: 1 + random.below(7), range: { min: low, max: high } },
    ]),
    ...random.pick<Fields>([
      { internalResistance: `${low}.0`, internalRange: { min: 0, max: high } },
      { internalResistance: volts + 1, internalRange: { min: low + 1, max: high + 1, scale: 'log' } },
      { internalResistance: '0.47', internalRange: { min: '0.1', max: 10, scale: 'E12' } },
      {},
    ]),
  };
}

const kinds: readonly (readonly [kind: string, letter: string, fields: (random: Random) => Fields])[] = [
  ['supply', 'B', (random) => ({ emf: random.pick([number(random), -3, 0, '-1/3']) })],
  ['supply', 'B', (random) => ({ emf: number(random), internalResistance: number(random) })],
  ['supply', 'B', (random) => ({ emf: random.pick(['4.5', '1.0', '-3', 7]), cells: 1 + random.below(7) })],
  ['supply', 'B', supply],
  ['supply', 'B', (random) => ({ emf: number(random), form: random.pick(['cell', 'battery', 'supply']) })],
  ['supply', 'B', (random) => ({ ...supply(random), form: 'battery' })],
  ['source', 'I', (random) => ({ current: random.pick([number(random), -3, 0, '-1/3']) })],
  ['source', 'I', (random) => ({ current: '0.5', range: { min: random.pick([0, '-1.50']), max: 2 } })],
  ['resistor', 'R', (random) => ({ resistance: random.pick([number(random), 0]) })],
  ['resistor', 'R', range],
  ['resistor', 'R', (random) => ({ resistance: number(random), tolerance: random.pick([5, '0.5', '1/3']) })],
  ['resistor', 'R', (random) => ({ resistance: number(random), ratedPower: number(random) })],
  ['lamp', 'L', (random) => ({ resistance: number(random) })],
  ['lamp', 'L', (random) => ({ ratedVoltage: number(random), ratedPower: number(random) })],
  ['lamp', 'L', (random) => ({ ratedVoltage: number(random), ratedCurrent: number(random) })],
  ['lamp', 'L', (random) => ({ ratedPower: number(random), ratedCurrent: number(random) })],
  ['lamp', 'L', (random) => ({ ratedVoltage: number(random), ratedCurrent: number(random), filament: true })],
  ['heater', 'H', (random) => ({ resistance: number(random) })],
  ['motor', 'M', (random) => ({ ratedVoltage: number(random), ratedPower: number(random) })],
  ['diode', 'D', (random) => random.pick<Fields>([{}, { forwardVoltage: '0.6', ratedCurrent: 1e-3 }])],
  ['led', 'LED', (random) => random.pick<Fields>([{}, { forwardVoltage: number(random) }])],
  ['thermistor', 'T', (random) => ({ resistance: number(random) })],
  ['ldr', 'LDR', (random) => ({ resistance: number(random) })],
  [
    'fuse',
    'F',
    (random) => ({ ratedCurrent: number(random), ...random.pick([{}, { blown: true }, { resistance: 0 }]) }),
  ],
  ['push', 'S', (random) => random.pick<Fields>([{}, { closed: true }])],
  ['switch', 'S', (random) => random.pick<Fields>([{}, { closed: true }, { closed: false }])],
  ['ammeter', 'A', (random) => random.pick<Fields>([{}, { resistance: number(random) }, { resistance: 0 }])],
  ['voltmeter', 'V', (random) => random.pick<Fields>([{}, { resistance: number(random) }])],
  ['wire', 'W', () => ({})],
];

/** The JSON form of a random graph: bridges, dead ends, loops of one, parts that hang together with nothing. */
export function randomJSON(random: Random, size: number): unknown {
  const count = 1 + random.below(size);
  const names = nodeNames.slice(random.below(4));
  const nodes = names.slice(0, 1 + random.below(Math.min(count + 1, names.length)));
  const supplied = !random.once(3);
  const components = Array.from({ length: count }, (_, index) => {
    const [kind, letter, fields] =
      supplied && index === 0
        ? kinds[0]!
        : random.pick(supplied ? kinds : kinds.filter(([name]) => name !== 'supply' && name !== 'source'));
    const id = random.once(6)
      ? random.pick(['X', 'LED', 'Quay', 'E1', 'RR']) + `${index}b`
      : `${letter}${index}`;
    const hidden = random.pick([{}, {}, { hidden: true }]);
    const condition = random.pick([{}, {}, { condition: 'broken' }, { condition: 'bridged' }]);
    const ends = { from: random.pick(nodes), to: random.pick(nodes) };
    const fault = random.pick([{}, {}, { fault: 'broken' }, { fault: 'bridged' }]);
    return { id, kind, ...ends, ...fields(random), ...hidden, ...condition, ...fault };
  });
  const end = (): string => random.pick(components.flatMap(({ from, to }) => [from, to]));
  const surroundings = random.pick<Fields>([
    {},
    { surroundings: { temperature: random.pick(['-7.5', 40]) } },
    { surroundings: { light: '1e4', temperature: '1/3' } },
  ]);
  const zero = random.once(3) ? { zero: end() } : {};
  return {
    version: 1,
    components,
    ...zero,
    ...surroundings,
    ...(!supplied && { terminals: [end(), end()] }),
  };
}
