/** A number, and by how much it can be off. */
export interface About {
  readonly value: number;
  readonly error: number;
}

const prefixes: Readonly<Record<string, number>> = {
  p: 1e-12,
  n: 1e-9,
  µ: 1e-6,
  m: 1e-3,
  '': 1,
  k: 1e3,
  M: 1e6,
  G: 1e9,
};

const product = (a: About, b: About): About => ({
  value: a.value * b.value,
  error: Math.abs(a.value) * b.error + Math.abs(b.value) * a.error + a.error * b.error,
});

function inverse({ value, error }: About): About {
  const rest = Math.abs(value) - error;
  return { value: 1 / value, error: rest > 0 ? error / (Math.abs(value) * rest) : Infinity };
}

function root({ value, error }: About): About {
  const middle = Math.sqrt(Math.max(0, value));
  return {
    value: middle,
    error: Math.max(Math.sqrt(value + error) - middle, middle - Math.sqrt(Math.max(0, value - error))),
  };
}

/** A reading as it is written, or a number alone: half a unit of its last place either way. */
export function readingOf(text: string): About {
  const [, sign = '', whole = '', places = '', prefix = ''] =
    /^(−?)(\d+)(?:[.,](\d+))?(?:\u202f([pnµmkMG]?)[VAΩWJCs])?$/.exec(text) ?? [];
  if (!whole) throw new Error(`“${text}” is no reading`);
  const unit = prefixes[prefix] ?? NaN;
  const value = Number(`${whole}.${places || '0'}`) * unit * (sign ? -1 : 1);
  // A whole number such as 120 V may have been rounded to tens.
  const last = places
    ? 10 ** -places.length
    : /0*$/.exec(whole)?.[0].length
      ? 10 ** (/0*$/.exec(whole)?.[0].length ?? 0)
      : 1;
  return { value, error: (last / 2) * unit };
}

/**
 * Both sides of an equation as a step writes it, worked out: sums, products, quotients, squares, roots, reciprocals, brackets;
 * `of` gives what a name stands for. Written from what the equations mean, not from how the engine writes them.
 */
export function sidesOf(equation: string, of: (name: string) => About): readonly [left: About, right: About] {
  let place = 0;
  const next = (token: string): boolean => {
    if (!equation.startsWith(token, place)) return false;
    place += token.length;
    return true;
  };
  const match = (pattern: RegExp): string | undefined => {
    const found = new RegExp(pattern, 'uy');
    found.lastIndex = place;
    const [text] = found.exec(equation) ?? [];
    if (text !== undefined) place += text.length;
    return text;
  };
  const name = (): string => {
    let text = match(/[A-Z]?[a-z]*_/) ?? '';
    if (!text) return match(/t\b/) ?? '';
    if (equation.charAt(place) !== '(') return text + (match(/[A-Za-z0-9_]+(?: rated)?/) ?? '');
    let depth = 0;
    do {
      const char = equation.charAt(place);
      if (char === '(') depth += 1;
      if (char === ')') depth -= 1;
      text += char;
      place += 1;
    } while (depth > 0 && place < equation.length);
    return text;
  };
  const factor = (): About => {
    let value: About;
    if (next('1/')) return inverse(factor());
    if (next('√(')) {
      value = root(sum());
      if (!next(')')) throw new Error(`a root that does not end in “${equation}”`);
      return value;
    }
    if (next('(')) {
      value = sum();
      if (!next(')')) throw new Error(`a bracket that does not end in “${equation}”`);
    } else {
      const reading = match(/−?\d+(?:[.,]\d+)?(?:\u202f[pnµmkMG]?[VAΩWJCs])?/);
      const called = reading === undefined ? name() : '';
      if (!called && reading === undefined) throw new Error(`“${equation}” ends at ${place}`);
      value = reading === undefined ? of(called) : readingOf(reading);
    }
    return next('²') ? product(value, value) : value;
  };
  const term = (): About => {
    let value = factor();
    for (;;) {
      if (next(' × ')) value = product(value, factor());
      else if (next(' ÷ ')) value = product(value, inverse(factor()));
      else return value;
    }
  };
  const signed = (sign: number): About => {
    const { value, error } = term();
    return { value: sign * value, error };
  };
  function sum(): About {
    let whole = signed(next('−') ? -1 : 1);
    for (;;) {
      const sign = next(' + ') ? 1 : next(' − ') ? -1 : 0;
      if (sign === 0) return whole;
      const more = signed(sign);
      whole = { value: whole.value + more.value, error: whole.error + more.error };
    }
  }
  const left = sum();
  if (!next(' = ')) throw new Error(`“${equation}” is no equation at ${place}`);
  const right = sum();
  if (place < equation.length) throw new Error(`“${equation}” is not read from ${place} on`);
  return [left, right];
}
