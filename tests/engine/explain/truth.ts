import type { Circuit, Component } from '../../../src/engine/circuit/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { electrical, leaves } from '../../../src/engine/topology/index.ts';

const isDriver = ({ kind }: Component): boolean => kind === 'supply' || kind === 'source';

/** A block as its label says: `(R1+(R2∥R3))`. */
type Block = string | { readonly joint: '+' | '∥'; readonly parts: readonly Block[] };

function blockOf(label: string): Block {
  if (!label.startsWith('(')) return label;
  let depth = 0;
  let joint: '+' | '∥' = '+';
  const parts: string[] = [''];
  for (const char of label.slice(1, -1)) {
    if (depth === 0 && (char === '+' || char === '∥')) {
      joint = char;
      parts.push('');
      continue;
    }
    if (char === '(') depth += 1;
    if (char === ')') depth -= 1;
    parts.push((parts.pop() ?? '') + char);
  }
  return { joint, parts: parts.map(blockOf) };
}

/**
 * What every quantity of a derivation is, by the solver and by what a block is: its parts' p.d.s along the tree add up in series and are
 * one in parallel, its currents the other way about. `t` is the time given.
 */
export function truthOf(circuit: Circuit, t?: number): (name: string) => number {
  const solution = solveExact(circuit);
  const { trees } = electrical(circuit);
  const signsIn = (some: typeof trees): ReadonlyMap<string, number> =>
    new Map(some.flatMap(leaves).map(({ id, reversed }) => [id, reversed ? -1 : 1]));
  // A block that is only there without what carries no current, as in a balanced bridge, lies along the trees without it.
  const carrying = circuit.components.filter(({ id }) => solution.current(id)?.n !== 0n);
  const rest = signsIn(electrical({ ...circuit, components: carrying }).trees);
  const whole = signsIn(trees);
  const isThere = (name: string): boolean => {
    const ids = name
      .replace(/^[^_]*_/, '')
      .split(/[+∥()]+/)
      .filter(Boolean);
    return (
      ids.length < 2 || trees.some((tree) => ids.every((id) => leaves(tree).some((leaf) => leaf.id === id)))
    );
  };
  let signs = whole;
  const supplies = circuit.components.filter(isDriver);
  const isSupply = (id: string): boolean => supplies.some((one) => one.id === id);
  const read = (name: string): number => solution.quantity(name)?.valueOf() ?? NaN;
  const own = (letter: string, block: Block): number => {
    if (typeof block === 'string') {
      const sign = (signs.get(block) ?? NaN) * (letter === 'I' && isSupply(block) ? -1 : 1);
      return sign * read(`${letter}_${block}`);
    }
    const [first, ...others] = block.parts;
    if (first === undefined) return NaN;
    const counted = supplies.find(({ kind }) => kind === 'source') ?? supplies.find(({ id }) => id === first);
    const isShared = (letter === 'I') === (block.joint === '+');
    const sum = [first, ...(isShared ? [] : others)].reduce((whole, part) => whole + own(letter, part), 0);
    // All supplies in a row count the way that the first one drives, or one of constant current.
    const isRow =
      supplies.length > 1 &&
      supplies.length === block.parts.length &&
      supplies.every(({ id }) => block.parts.includes(id));
    return isRow ? sum * (signs.get(counted?.id ?? '') ?? NaN) : sum;
  };
  const ohms = (block: Block): number => {
    if (typeof block === 'string') return read(`R_${block}`);
    const parts = block.parts.map(ohms);
    if (block.joint === '+') return parts.reduce((sum, part) => sum + part, 0);
    return 1 / parts.reduce((sum, part) => sum + 1 / part, 0);
  };
  const seconds = t ?? NaN;
  /** What is printed on a component. */
  const marked = (letter: string, id: string): number => {
    const one = circuit.components.find((component) => component.id === id);
    if (one?.kind !== 'lamp' && one?.kind !== 'heater' && one?.kind !== 'motor') return NaN;
    const marks = { V: one.ratedVoltage, P: one.ratedPower, I: one.ratedCurrent };
    return (
      Object.entries(marks)
        .find(([key]) => key === letter)?.[1]
        ?.value.valueOf() ?? NaN
    );
  };
  const truth = (name: string): number => {
    const [letter = '', label = ''] = /^([^_]*)_(.*)$/.exec(name)?.slice(1) ?? [];
    if (name === 't') return seconds;
    if (label.endsWith(' rated')) return marked(letter, label.replace(' rated', ''));
    if (letter === 'W') return truth(`P_${label}`) * seconds;
    if (letter === 'Q') return truth(`I_${label}`) * seconds;
    if (letter === 'Vr') return read(`I_${label}`) * read(`r_${label}`);
    // Supplies in a row: all that the one current passes.
    if (name === 'R_loop' && supplies.length > 1)
      return read('P_total') / read(`I_${supplies[0]?.id ?? ''}`) ** 2;
    if (!label.startsWith('(')) return read(name);
    const block = blockOf(label);
    signs = isThere(name) ? whole : rest;
    if (letter === 'P') return own('V', block) * own('I', block);
    return letter === 'R' ? ohms(block) : own(letter, block);
  };
  return truth;
}
