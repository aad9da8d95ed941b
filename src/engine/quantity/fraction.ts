/** What a fraction is made from; a text is whole (`12`), decimal (`-4.70`, `1e-12`) or a ratio (`1/3`). */
export type FractionInput = Fraction | bigint | number | string;

/** Denominators up to this are found in a double. */
const most = 1e7;

/** The greatest whole number that divides both. */
function gcd(a: bigint, b: bigint): bigint {
  while (b) {
    const rest = a % b;
    a = b;
    b = rest;
  }
  return a;
}

/** A number as a ratio: the simplest that is it to its last place (by continued fractions), else its shortest decimal. */
function simplest(value: number): readonly [bigint, bigint] {
  const size = Math.abs(value);
  let [above, below, lastAbove, lastBelow] = [1, 0, 0, 1];
  for (let rest = size; below <= most; rest = 1 / (rest % 1)) {
    const whole = Math.floor(rest);
    [above, lastAbove] = [whole * above + lastAbove, above];
    [below, lastBelow] = [whole * below + lastBelow, below];
    if (Math.abs(above / below - size) <= 1e-15 * size)
      return [BigInt(Math.sign(value) * above), BigInt(below)];
  }
  return read(`${value}`);
}

const pattern = /^([+-]?\d+)(?:\.(\d+))?(?:e([+-]?\d+)|\/(\d+))?$/;

function read(text: string): readonly [bigint, bigint] {
  const [, whole = `“${text}”`, places = '', power = '0', below = '1'] = pattern.exec(text) ?? [];
  const exponent = Number(power) - places.length;
  const ten = 10n ** BigInt(Math.abs(exponent));
  const digits = BigInt(whole + places);
  return exponent < 0 ? [digits, BigInt(below) * ten] : [digits * ten, BigInt(below)];
}

/** Above and below the line, the sign above. */
function ratioOf(value: FractionInput): readonly [bigint, bigint] {
  if (typeof value === 'bigint') return [value, 1n];
  if (typeof value === 'number') return Number.isInteger(value) ? [BigInt(value), 1n] : simplest(value);
  return typeof value === 'string' ? read(value) : [value.s * value.n, value.d];
}

/** A ratio of two whole numbers in lowest terms, exactly. Throws what BigInt throws where its input is no number, RangeError where it divides by 0. */
export class Fraction {
  /** The sign: -1n below 0, else 1n. */
  readonly s: bigint;
  /** Above the line, without its sign. */
  readonly n: bigint;
  /** Below the line, more than 0. */
  readonly d: bigint;

  constructor(value: FractionInput, divisor: bigint | number = 1n) {
    const [above, ownBelow] = ratioOf(value);
    const below = ownBelow * BigInt(divisor);
    const isNegative = above < 0n !== below < 0n;
    const [n, d] = [above < 0n ? -above : above, below < 0n ? -below : below];
    const common = gcd(n, d);
    this.s = isNegative && n ? -1n : 1n;
    this.n = n / common;
    this.d = d / common;
    if (!d) throw new RangeError('Division by zero');
  }

  /** The same without its sign. */
  abs(): Fraction {
    return new Fraction(this.n, this.d);
  }

  /** The same with the other sign. */
  neg(): Fraction {
    return new Fraction(-this.s * this.n, this.d);
  }

  /** One over it. */
  inverse(): Fraction {
    return new Fraction(this.s * this.d, this.n);
  }

  /** Their sum. */
  add(value: FractionInput): Fraction {
    const [above, below] = ratioOf(value);
    return new Fraction(this.s * this.n * below + above * this.d, this.d * below);
  }

  /** Their difference. */
  sub(value: FractionInput): Fraction {
    const [above, below] = ratioOf(value);
    return new Fraction(this.s * this.n * below - above * this.d, this.d * below);
  }

  /** Their product. */
  mul(value: FractionInput): Fraction {
    const [above, below] = ratioOf(value);
    return new Fraction(this.s * this.n * above, this.d * below);
  }

  /** Their quotient. */
  div(value: FractionInput): Fraction {
    const [above, below] = ratioOf(value);
    return new Fraction(this.s * this.n * below, this.d * above);
  }

  /** The smallest value of which both are a whole part. */
  lcm({ n, d }: Fraction): Fraction {
    const [one, other] = [this.n * d, n * this.d];
    return new Fraction(one * other, gcd(one, other) * this.d * d);
  }

  /** 1 where it is more than the other, -1 where it is less, else 0. */
  compare(value: FractionInput): number {
    const [above, below] = ratioOf(value);
    const [one, other] = [this.s * this.n * below, above * this.d];
    return Number(one > other) - Number(one < other);
  }

  /** Whether they are the same number. */
  equals(value: FractionInput): boolean {
    return this.compare(value) === 0;
  }

  /** The next whole number below, or itself. */
  floor(): Fraction {
    const isBetween = this.s < 0n && this.d > 1n;
    return new Fraction(this.s * (this.n / this.d) - (isBetween ? 1n : 0n));
  }

  /** The next whole number above, or itself. */
  ceil(): Fraction {
    return this.neg().floor().neg();
  }

  /** The nearest whole number; a half goes up. */
  round(): Fraction {
    return this.add(new Fraction(1n, 2n)).floor();
  }

  /** The nearest double. */
  valueOf(): number {
    return Number(this.s * this.n) / Number(this.d);
  }

  /** "3", "-3/2" */
  toFraction(): string {
    return `${this.s * this.n}${this.d > 1n ? `/${this.d}` : ''}`;
  }

  /** The same as a ratio. */
  toString(): string {
    return this.toFraction();
  }
}

/** Ten to a whole power, exactly. */
export function powerOfTen(exponent: number): Fraction {
  const ten = 10n ** BigInt(Math.abs(exponent));
  return exponent < 0 ? new Fraction(1n, ten) : new Fraction(ten);
}
