import { isMeter, isSupply, nearest, wholesIn, type Circuit, type Component } from '../circuit/index.ts';

/** The letters before the id of a component, in the names of its quantities. */
export function lettersOf({ kind }: Component): readonly string[] {
  if (kind === 'source') return ['I', 'V', 'P'];
  return kind === 'supply' ? ['E', 'r', 'I', 'V', 'P', 'Pemf', 'Pr'] : ['R', 'I', 'V', 'P'];
}

/** Whether a node is a named junction, whose p.d.s may be asked for: its name starts with a letter. */
export function isNamed(node: string): boolean {
  return /^\p{L}/u.test(node);
}

/**
 * Every name of a quantity that may be asked of a circuit: those of each component in order, the resistance of whole potentiometers and the p.d. along them, the totals that have a meaning, then
 * the p.d.s between named junctions, each pair once. A network without a supply has resistances only.
 */
export function quantities({ components }: Circuit): string[] {
  const [only, ...others] = components.filter(isSupply);
  const names = components.flatMap((component) =>
    lettersOf(component)
      .filter((letter) => only !== undefined || letter === 'R')
      .map((letter) => `${letter}_${component.id}`),
  );
  for (const id of wholesIn(components)) names.push(`R_${id}`, ...(only ? [`V_${id}`] : []));
  if (!only) return [...names, 'R_total'];
  if (others.length === 0) names.push('R_total', ...(only.kind === 'supply' ? ['R_loop'] : []), 'I_total');
  names.push('P_total', 'P_dissipated');
  const junctions = [...new Set(components.flatMap(({ from, to }) => [from, to]))].filter(isNamed);
  return [...names, ...junctions.flatMap((p, k) => junctions.slice(k + 1).map((q) => `V_${p}_${q}`))];
}

/**
 * The quantity that was probably meant by what is no name of one; '' where none is near. A label alone is a meter’s reading, else its
 * resistance or its e.m.f.; U is the p.d.
 */
export function meantBy(found: string, circuit: Circuit): string {
  const names = quantities(circuit);
  const component = circuit.components.find(({ id }) => id === found);
  const letters =
    component && isMeter(component) ? [component.kind === 'ammeter' ? 'I' : 'V'] : ['R', 'E', 'I'];
  const whole = letters.map((letter) => `${letter}_${found}`).find((name) => names.includes(name));
  return whole ?? nearest(found.replace(/^U_/, 'V_'), names);
}
