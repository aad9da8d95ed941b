import type { Circuit } from '../circuit/index.ts';
import type { Reasoning, Step } from '../explain/index.ts';
import { quantity } from '../quantity/index.ts';
import { electrical } from '../topology/index.ts';
import { collapse } from './collapse.ts';

/** The circuit as it is thought of at one step of a derivation. */
export interface Stage {
  /** Each block that is one resistor by then has its make-up for a label: `R2 + R3`. Values are exact. */
  readonly circuit: Circuit;
  /** The components of it that the step is about. */
  readonly about: readonly string[];
  /** The values of its blocks as the derivation writes them, by their labels. */
  readonly values: Readonly<Record<string, string>>;
}

/** A circuit, what its components are called in quantity names, and what each was at the start. */
interface Level {
  readonly circuit: Circuit;
  /** Its components by what their quantities are called after: `R1`, `(R2+R3)`, `total`. */
  readonly ids: ReadonlyMap<string, string>;
  /** The components that each stands for. */
  readonly parts: ReadonlyMap<string, readonly string[]>;
  readonly values: Stage['values'];
}

const joined: Partial<Record<Reasoning, string>> = {
  'resistances in series': ' + ',
  'resistances in parallel': ' ∥ ',
  'product over sum': ' ∥ ',
};

/** A label longer than this has only its first and last component. */
const most = 5;

/** What a quantity is called after. */
const called = (name: string): string => name.replace(/^[^_]*_/, '');

/** Of a block, its make-up; brackets only round blocks in it. */
function labelOf({ uses, rule, about }: Step, { ids }: Level): string {
  if (about.length > most) return `${about[0] ?? ''}…${about.at(-1) ?? ''}`;
  const resistances = uses.filter((name) => name.startsWith('R_'));
  const parts = resistances.map((name) => ids.get(called(name)) ?? called(name));
  return parts.map((part) => (/[ …]/.test(part) ? `(${part})` : part)).join(joined[rule]);
}

/** The level after a step that puts resistances together; the same where they are no stretch of the circuit. */
function reduced(level: Level, step: Step): Level {
  const { circuit, ids, parts, values } = level;
  const inside = circuit.components
    .map(({ id }) => id)
    .filter((id) => (parts.get(id) ?? [id]).every((part) => step.about.includes(part)));
  const [only] = inside;
  const name = called(step.gives);
  if (only !== undefined && inside.length === 1) return { ...level, ids: new Map([...ids, [name, only]]) };
  const id = labelOf(step, level);
  const next = collapse(circuit, inside, { id, resistance: quantity(step.value, 'Ω') });
  if (!next) return level;
  const left = new Set(next.components.map((one) => one.id));
  return {
    circuit: next,
    ids: new Map([...[...ids].filter(([, own]) => left.has(own)), [name, id]]),
    parts: new Map([...parts, [id, step.about]]),
    values: { ...values, [id]: step.text },
  };
}

/** The level without a component that carries no current. */
function without({ circuit, ids, ...level }: Level, id: string): Level {
  const components = circuit.components.filter((one) => one.id !== id);
  return {
    ...level,
    circuit: { ...circuit, components },
    ids: new Map([...ids].filter(([, own]) => own !== id)),
  };
}

const isReduction = ({ rule, equation, rearranged }: Step): boolean =>
  joined[rule] !== undefined && equation === rearranged;

/**
 * The smaller circuits that a derivation goes through: at each step that puts resistances together, the circuit with one resistor in
 * their place; then, as currents and p.d.s are handed down, the larger ones again. Of each step its stage, where the circuit is another
 * than at the step before; nothing where it stays the same, and nothing at all of circuits that are not series and parallel. Ideal
 * voltmeters and what carries no current are left out.
 */
export function stagesOf(circuit: Circuit, steps: readonly Step[]): readonly (Stage | undefined)[] {
  const { live } = electrical(circuit);
  // The smaller circuits have no 0 V mark: its node may be in a block.
  const { terminals, surroundings } = circuit;
  const start: Level = {
    circuit: { components: live, ...(terminals && { terminals }), ...(surroundings && { surroundings }) },
    ids: new Map(live.map(({ id }) => [id, id])),
    parts: new Map(),
    values: {},
  };
  const levels = [start];
  let shown = start.circuit;
  return steps.map((step) => {
    for (const note of step.notes ?? [])
      if (note.code === 'left out') levels.push(without(levels.at(-1) ?? start, note.data.id));
    const last = levels.at(-1) ?? start;
    if (isReduction(step)) {
      const next = reduced(last, step);
      if (next.circuit === last.circuit) levels.pop();
      levels.push(next);
    }
    const names = isReduction(step) ? [step.gives] : [step.gives, ...step.uses];
    const holds = (wanted: readonly string[]): Level | undefined =>
      levels.findLast(({ ids }) => wanted.every((name) => ids.has(called(name))));
    const level = holds(names) ?? holds([step.gives]);
    if (!level || level.circuit === shown) return undefined;
    shown = level.circuit;
    const about = new Set(names.flatMap((name) => level.ids.get(called(name)) ?? []));
    return { circuit: level.circuit, about: [...about], values: level.values };
  });
}
