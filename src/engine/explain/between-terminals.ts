import type { Circuit, Component } from '../circuit/index.ts';
import { Fraction, quantity } from '../quantity/index.ts';
import type { Course } from '../words/index.ts';
import type { Step } from './derivation.ts';
import { why } from './why.ts';
import { styleOf, symbol, valueText } from './write.ts';

/** Its e.m.f. in volts: divided by many numbers without a remainder. */
const emf = new Fraction(12);

/** A network between terminals with a supply that is only thought of, and the step that thinks of it. */
export interface Thought {
  readonly circuit: Circuit;
  /** The e.m.f. of the supply, by its quantity name. */
  readonly start: readonly [name: string, value: Fraction];
  readonly step: Step;
}

/** A supply between the terminals of a network: what it drives says what resistance there is; none where a circuit has no terminals. */
export function thinkOfSupply({ terminals, ...circuit }: Circuit, course: Course): Thought | undefined {
  if (!terminals) return undefined;
  const ids = circuit.components.map((one) => one.id);
  const free = Array.from({ length: ids.length + 1 }, (_, n) => `B${n}`).find((id) => !ids.includes(id));
  const id = free ?? '';
  const [from, to] = terminals;
  const supply: Component = { id, kind: 'supply', from, to, emf: quantity(emf, 'V') };
  const name = `E_${id}`;
  const text = valueText(name, emf, styleOf(course));
  const equation = `${symbol(name, course)} = ${text}`;
  return {
    circuit: { ...circuit, components: [supply, ...circuit.components] },
    start: [name, emf],
    step: {
      rule: 'trial supply',
      about: ids,
      uses: [],
      gives: name,
      equation,
      rearranged: equation,
      substituted: equation,
      value: emf,
      text,
      why: why('trial supply', [id], course),
    },
  };
}
