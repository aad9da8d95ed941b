import type { Circuit, Component } from '../circuit/index.ts';

const ofSupply = ['E', 'r', 'I', 'V', 'P', 'Pemf', 'Pr'] as const;
const ofOther = ['R', 'I', 'V', 'P'] as const;
const ofOneSupply = ['R_total', 'R_loop', 'I_total'] as const;
const ofAny = ['P_total', 'P_dissipated'] as const;

/** A letter that stands before an id in the name of a quantity. */
export type Letter = (typeof ofSupply | typeof ofOther)[number];
/** The name of a quantity of the whole circuit. */
export type Total = (typeof ofOneSupply | typeof ofAny)[number];

/** The letters that go with a component. */
export function lettersOf({ kind }: Component): readonly Letter[] {
  return kind === 'supply' ? ofSupply : ofOther;
}

/** Whether a name is that of a quantity of the whole circuit. */
export function isTotal(name: string): name is Total {
  return [...ofOneSupply, ...ofAny].some((total) => total === name);
}

/** Whether a node is a named junction, whose p.d.s may be asked for: its name starts with a letter. */
export function isNamed(node: string): boolean {
  return /^\p{L}/u.test(node);
}

/**
 * Every name of a quantity that may be asked of a circuit: those of each component in order, the totals that have a meaning, then
 * the p.d.s between named junctions, each pair once. A network without a supply has resistances only.
 */
export function quantities({ components }: Circuit): string[] {
  const supplies = components.filter(({ kind }) => kind === 'supply').length;
  const names = components.flatMap((component) =>
    lettersOf(component)
      .filter((letter) => supplies > 0 || letter === 'R')
      .map((letter) => `${letter}_${component.id}`),
  );
  if (supplies === 0) return [...names, 'R_total'];
  if (supplies === 1) names.push(...ofOneSupply);
  names.push(...ofAny);
  const junctions = [...new Set(components.flatMap(({ from, to }) => [from, to]))].filter(isNamed);
  return [...names, ...junctions.flatMap((p, k) => junctions.slice(k + 1).map((q) => `V_${p}_${q}`))];
}
