import { relation, term, times, type Relation, type Sign } from './relation.ts';
import { every, flow, group, isDriver, type Part } from './structure.ts';

/** A circuit round its supplies. */
export interface Round {
  /** The supplies, and all that is outside them as one. */
  readonly roots: readonly Part[];
  /** What holds between them. */
  readonly relations: readonly Relation[];
  /** Quantities of what is outside that go by the name of the supply's. */
  readonly names: readonly (readonly [name: string, called: string])[];
}

/** Supplies one after another as one, counted the way that one of them drives. */
function inRow(supplies: readonly Part[], first: Part): readonly Relation[] {
  const about = supplies.map(({ label }) => label);
  const turned = (one: Part): Sign => times(flow(one), flow(first));
  const sum = (rule: 'e.m.f.s in series' | 'p.d.s add', letter: string): Relation =>
    relation(
      rule,
      'sum',
      about,
      `${letter}_(${about.join('+')})`,
      ...supplies.map((one) => term(`${letter}_${one.label}`, turned(one))),
    );
  const others = supplies.filter((one) => one !== first);
  const currents = others.map((one) => {
    const current = term(`I_${first.label}`, turned(one));
    return relation('same current', 'sum', [first.label, one.label], `I_${one.label}`, current);
  });
  const hasEmf = supplies.every(({ kind }) => kind === 'supply');
  return [...currents, ...(hasEmf ? [sum('e.m.f.s in series', 'E')] : []), sum('p.d.s add', 'V')];
}

/**
 * The circuit round one supply, or round several in one row: they, and all that is outside them as one. None where some supply stands in a
 * branch. The p.d. and the current of a block outside go by the supply's names.
 */
export function roundSupply(ring: Part, isReal: (id: string) => boolean): Round | undefined {
  const row = ring.kind === 'series' ? ring.parts : [ring];
  const supplies = row.filter(isDriver);
  const rest = row.filter((part) => !isDriver(part));
  const given = supplies.find(({ kind }) => kind === 'source');
  const supply = given ?? supplies[0];
  if (!supply || rest.flatMap(every).some(isDriver)) return undefined;
  const [first] = rest;
  const B = supply.label;
  const turn = flow(supply);
  const isOne = supplies.length === 1;
  const source = isOne ? B : `(${supplies.map(({ label }) => label).join('+')})`;
  const inner = supplies.filter(({ label }) => isReal(label)).map(({ label }) => term(`r_${label}`));
  const current = (id: string, sign: Sign, about: readonly string[]): Relation =>
    relation('same current', 'sum', [B, ...about], `I_${id}`, term(`I_${B}`, times(sign, turn)));
  const around = [
    ...ring.joins.map(({ id, sign }) => current(id, sign, [id])),
    ...(isOne ? [] : inRow(supplies, supply)),
  ];
  const product = (rule: Relation['rule'], about: readonly string[], ohms: string): Relation =>
    relation(rule, 'product', about, `E_${source}`, term(`I_${B}`), term(ohms));
  if (!first) {
    const short = product('e.m.f. and internal resistance', ring.about, `r_${B}`);
    return { roots: supplies, relations: isOne && inner.length > 0 ? [...around, short] : around, names: [] };
  }
  const whole = rest.length === 1 ? first : group('series', rest);
  const isBlock = whole.parts.length > 0;
  const outside = isOne && isBlock ? { ...whole, label: 'total' } : whole;
  const { label, about } = outside;
  const ohms = `R_${label}`;
  const across = (part: Part): Relation => {
    const pd = term(`V_${source}`, times(part.sign, turn));
    return relation('same p.d.', 'sum', [B, ...part.about], `V_${part.label}`, pd);
  };
  const ids = [...supplies.map((one) => one.label), ...about];
  const roundLoop = (): readonly Relation[] =>
    inner.length > 0
      ? [
          relation('internal resistance in series', 'sum', ids, 'R_loop', term(ohms), ...inner),
          product('e.m.f. round the loop', ids, 'R_loop'),
        ]
      : [
          relation('resistances in series', 'sum', about, 'R_loop', term(ohms)),
          product('p.d. is current times resistance', ids, ohms),
        ];
  const relations = [
    ...around,
    ...[outside, ...(whole.kind === 'series' ? whole.parts : [])].map((part) =>
      current(part.label, flow(part), part.about),
    ),
    ...[outside, ...(whole.kind === 'parallel' ? whole.parts : [])].map(across),
    ...(isOne && !isBlock ? [relation('resistances in series', 'sum', about, 'R_total', term(ohms))] : []),
    ...(given ? [] : roundLoop()),
  ];
  const isAlong = isBlock && turn === 1;
  return {
    roots: [...supplies, outside],
    relations,
    names: isAlong
      ? [
          [`I_${label}`, `I_${B}`],
          [`V_${label}`, `V_${source}`],
        ]
      : [],
  };
}
