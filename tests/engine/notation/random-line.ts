import { Random } from './random.ts';

/** A number above 0 in one of its spellings. */
export function randomNumber(random: Random): string {
  const digits = `${1 + random.below(99)}`;
  const decimals = `${random.below(10)}${random.below(100)}`;
  const power = random.below(4);
  return random.pick([
    digits,
    digits,
    `${digits}.${random.below(10)}`,
    `${digits},${random.below(100)}`,
    `0.${decimals}1`,
    `${digits} 000`,
    `${digits}\u202f500.5`,
    `${digits}e${power}`,
    `${digits}.5e-${power}`,
    `${digits}×10^${power}`,
    `${digits}.25 × 10⁻${'⁰¹²³'.charAt(power)}`,
    `${digits}/${1 + random.below(12)}`,
  ]);
}

function randomQuantity(random: Random, unit: string): string {
  const name = unit === 'Ω' ? random.pick(['Ω', '\u2126', 'ohm', 'ohms']) : unit;
  const prefix = random.pick(['', '', '', 'm', 'k', 'M', 'u', '\u00b5', '\u03bc', 'n', 'p', 'G']);
  return `${randomNumber(random)}${random.pick(['', ' ', '\u00a0', '\u2009'])}${prefix}${name}`;
}

const code = (random: Random): string =>
  random.pick(['4k7', '470R', 'R47', '1M0', '33K', '2k', '4M7Ω', 'R470']);

function resistor(random: Random): string[] {
  const prefix = random.pick(['', 'k', 'm']);
  const low = random.below(10);
  const value = low + 1 + random.below(30);
  const range = random.pick([
    `[${low}..${value + random.below(40)}]`,
    `[${low}…${value + 7} step 1/2]`,
    `[${low} ${prefix}Ω ... ${value + 5} step 1]`,
    `[${low + 1}..${value + 50} log]`,
  ]);
  const extras = [`${1 + random.below(5)} W`, `±${1 + random.below(20)}%`, '+-0.5 %', '+/-5%'];
  const main = random.pick([
    [randomQuantity(random, 'Ω')],
    [code(random)],
    [range, `${value} ${prefix}Ω`],
    [`${value} ${prefix}Ω`, range],
    [`[10..1k E12] ${random.pick(['47', '100', '470'])} Ω`],
    [`[1 Ω..1M E24]`, '4.7 kΩ'],
    ['4k7', '[1k..10k step 100 Ω]'],
  ]);
  const rated = random.once(3) ? extras.slice(0, 1) : [];
  const tolerance = random.once(3) ? [random.pick(extras.slice(1))] : [];
  return [...main, ...rated, ...tolerance];
}

function lamp(random: Random): string[] {
  const ratings = ['V', 'W', 'A'].map((unit) => randomQuantity(random, unit));
  ratings.splice(random.below(3), 1);
  return random.once(2) ? [randomQuantity(random, 'Ω')] : ratings;
}

function supply(random: Random): string[] {
  const emf = randomQuantity(random, 'V');
  const sign = random.once(5) ? random.pick(['-', '−', '–']) : '';
  const count = random.once(4) ? `${1 + random.below(6)} ${random.pick(['×', 'x'])} ` : '';
  const inside = random.pick([
    `r ${randomQuantity(random, 'Ω')}`,
    `r [0..${5 + random.below(5)}] ${random.below(5)}.5 Ω`,
    'r[1 mΩ..50 log]5mΩ',
    'r [1 Ω … 1k E12] 4.7 Ω',
  ]);
  const main = random.pick([
    [`${sign}${count}${emf}`],
    [`${sign}${count}${emf}`],
    [`[-${random.below(9)}..${6 + random.below(30)}] 2 × ${random.below(4)} V`],
    ['6.0 kV [−12 kV..12 step 1/2]'],
    [`[–20..–1 step 1] -${1 + random.below(20)} V`],
    ['[1..10 E24] 5.1 V'],
  ]);
  // A range right behind r could be that of either value.
  return random.once(3) ? [`${main.join(' ')} ${inside}`] : main;
}

function source(random: Random): string[] {
  const sign = random.once(4) ? random.pick(['-', '−']) : '';
  return random.pick([
    [`${sign}${randomQuantity(random, 'A')}`],
    [`[-${random.below(9)}..${6 + random.below(30)}] ${random.below(6)} mA`],
    ['[0..2 A step 1/10]', `0.${random.below(10)} A`],
    ['[1 mA..1 A log] 20 mA'],
  ]);
}

const kinds: readonly (readonly [
  letters: string,
  words: readonly string[],
  properties: (random: Random) => string[],
])[] = [
  ['B', ['battery'], supply],
  ['B', ['cell', 'supply'], (random) => [randomQuantity(random, 'V')]],
  ['I', ['source'], source],
  ['R', ['resistor'], resistor],
  ['R', ['resistor'], resistor],
  ['L', ['lamp'], lamp],
  [
    'L',
    ['lamp'],
    (random) => [...['V', 'A'].map((unit) => randomQuantity(random, unit)), 'filament'].reverse(),
  ],
  ['H', ['heater'], lamp],
  ['M', ['motor'], lamp],
  ['D', ['diode'], (random) => (random.once(2) ? [randomQuantity(random, 'V')] : [])],
  ['LED', ['led'], (random) => [randomQuantity(random, 'A'), randomQuantity(random, 'V')]],
  ['T', ['thermistor'], (random) => [randomQuantity(random, 'Ω')]],
  ['LDR', ['ldr'], (random) => [randomQuantity(random, 'Ω')]],
  ['F', ['fuse'], (random) => [randomQuantity(random, 'A'), ...random.pick([[], ['blown']])]],
  ['S', ['push'], (random) => random.pick([[], ['open'], ['closed']])],
  ['S', ['switch'], (random) => random.pick([[], ['open'], ['closed']])],
  ['A', ['ammeter'], (random) => (random.once(2) ? [randomQuantity(random, 'Ω')] : [])],
  ['V', ['voltmeter'], (random) => (random.once(2) ? [randomQuantity(random, 'Ω')] : [])],
  ['W', ['wire'], () => []],
];

/** A line of notation that can be read, and how many components it has. */
export class RandomLine {
  readonly text: string;
  readonly #random: Random;
  readonly #ids: string[] = [];
  readonly #junctions: string[] = [];

  constructor(random: Random, size: number) {
    this.#random = random;
    const chain = this.#series(size);
    const first = random.once(3) ? chain : `${this.#component('supply')} + ${chain}`;
    const mark = this.#junctions.length > 0 && random.once(3) ? [`0 V @${random.pick(this.#junctions)}`] : [];
    this.text = [first, ...this.#placed(), ...mark].join(random.pick([';', ' ; ', ';\n']));
  }

  #component(only?: string): string {
    const random = this.#random;
    const [letter, words, properties] = random.pick(only ? kinds.slice(0, 1) : kinds);
    const number = this.#ids.length + 1;
    const odd = random.once(8);
    const name = odd ? random.pick(['X', 'LED', 'Quay', 'E', 'Pier']) + `${number}a` : `${letter}${number}`;
    this.#ids.push(name);
    const shown = random.once(8) ? name.replace(/\d/g, (digit) => '₀₁₂₃₄₅₆₇₈₉'.charAt(Number(digit))) : name;
    const word = odd || random.once(6) ? [random.pick(words)] : [];
    const told = properties(random);
    // A code stands right behind the label.
    if (/^\d*[RkKM]\d*Ω?$/.test(told[0] ?? '')) return [...word, shown, ...told].join(' ');
    const condition = random.pick(['broken', 'bridged']);
    const states = ['reversed', 'hidden', condition, `secretly ${random.pick(['broken', 'bridged'])}`].filter(
      () => random.once(6),
    );
    return [...word, shown, ...[...told, ...states].sort(() => random.below(3) - 1)].join(' ');
  }

  #series(size: number): string {
    const random = this.#random;
    if (size <= 1) return this.#component();
    const parts: string[] = [];
    for (let left = size; left > 0;) {
      const share = 1 + random.below(left);
      parts.push(share === 1 ? this.#component() : share < size ? this.#parallel(share) : this.#component());
      if (left > share && random.once(4)) parts.push(this.#junction());
      left -= share;
    }
    return parts.join(random.pick([' + ', '+', ' +\n']));
  }

  #junction(): string {
    const name = `${this.#random.pick(['p', 'Q', 'quay'])}${this.#junctions.length}`;
    this.#junctions.push(name);
    return `@${name}`;
  }

  #parallel(size: number): string {
    const random = this.#random;
    const share = 1 + random.below(size - 1);
    const branch = (count: number): string => (count === 1 ? this.#component() : `(${this.#series(count)})`);
    return `(${branch(share)} ${random.pick(['∥', '||', '‖', '//'])} ${branch(size - share)})`;
  }

  #placed(): string[] {
    const random = this.#random;
    const across = random.once(3) ? [`${this.#component()} across ${random.pick(this.#ids)}`] : [];
    const valid = across.filter((text) => !text.endsWith(` ${this.#ids.at(-1)!}`));
    const dash = random.pick(['-', '–', '—', ' − ']);
    const between = this.#junctions.map(
      (name) => `${this.#component()} @${name}${dash}@${random.pick(this.#junctions)}`,
    );
    return [...valid, ...between];
  }
}
