import type { Circuit } from '../circuit/index.ts';
import type { Reasoning } from './codes.ts';
import { term, type Relation, type Term } from './relation.ts';
import { group, points, structure, type Part } from './structure.ts';

type Sign = 1 | -1;
const times = (a: Sign, b: Sign): Sign => (a === b ? 1 : -1);

/** The sign of a part's current along the tree: a supply's counts from its negative to its positive end. */
const flow = ({ kind, sign }: Part): Sign =>
  kind === 'supply' && sign === -1 ? 1 : kind === 'supply' ? -1 : sign;

const relation = (
  rule: Reasoning,
  form: Relation['form'],
  about: readonly string[],
  left: string,
  ...right: readonly Term[]
): Relation => ({ rule, form, about, left, right });

/** What holds in one part: Ohm's law and the powers, or what a supply's terminals show. */
function own({ label, kind, about }: Part, real: boolean): readonly Relation[] {
  const [I, V, R, P] = [`I_${label}`, `V_${label}`, `R_${label}`, `P_${label}`];
  const power = relation('power', 'product', about, P, term(V), term(I));
  if (kind === 'supply') {
    const [E, r, lost] = [`E_${label}`, `r_${label}`, `Pr_${label}`];
    const emf = relation('power of the e.m.f.', 'product', about, `Pemf_${label}`, term(E), term(I));
    const inner = 'e.m.f. and internal resistance';
    if (!real) return [power, emf, relation('no internal resistance', 'sum', about, V, term(E))];
    return [
      power,
      emf,
      relation('power from current', 'product', about, lost, term(I, 1, 2), term(r)),
      relation(inner, 'product', about, `Vr_${label}`, term(I), term(r)),
      relation(inner, 'sum', about, E, term(V), term(`Vr_${label}`)),
    ];
  }
  const ohm = relation('p.d. is current times resistance', 'product', about, V, term(I), term(R));
  // The total power counts what is lost inside the supply too.
  if (label === 'total') return [ohm];
  return [
    ohm,
    power,
    relation('power from current', 'product', about, P, term(I, 1, 2), term(R)),
    relation('power from p.d.', 'product', about, P, term(V, 1, 2), term(R, 1, -1)),
  ];
}

/** What holds between a part and the parts that it is made of. */
function within(part: Part): readonly Relation[] {
  const { kind, parts, about, label, joins } = part;
  const equal = (rule: Reasoning, letter: string, sign: (one: Part) => Sign): readonly Relation[] =>
    parts.map((one) =>
      relation(rule, 'sum', one.about, `${letter}_${one.label}`, term(`${letter}_${label}`, sign(one))),
    );
  const added = (rule: Reasoning, letter: string, sign: (one: Part) => Sign): Relation =>
    relation(
      rule,
      'sum',
      about,
      `${letter}_${label}`,
      ...parts.map((one) => term(`${letter}_${one.label}`, sign(one))),
    );
  const hasSupply = parts.some((one) => one.kind === 'supply');
  const own = joins.map(({ id, sign }) =>
    relation('same current', 'sum', [...about, id], `I_${id}`, term(`I_${label}`, times(sign, flow(part)))),
  );
  const below = parts.flatMap(within);
  const along = ({ sign }: Part): Sign => sign;
  const plain = (): Sign => 1;
  if (kind === 'series') {
    const ratios = parts.map((one) =>
      relation(
        'potential divider',
        'product',
        about,
        `V_${one.label}`,
        term(`V_${label}`, one.sign),
        term(`R_${one.label}`),
        term(`R_${label}`, 1, -1),
      ),
    );
    const pairs = parts.slice(1).map((one, index) => {
      const before = parts[index] ?? one;
      return relation(
        'same current',
        'sum',
        [...before.about, ...one.about],
        `I_${one.label}`,
        term(`I_${before.label}`, times(flow(one), flow(before))),
      );
    });
    return [
      ...own,
      ...below,
      ...pairs,
      ...equal('same current', 'I', flow),
      added('p.d.s add', 'V', along),
      ...(hasSupply ? [] : [added('resistances in series', 'R', plain), ...ratios]),
    ];
  }
  if (kind === 'parallel')
    return [
      ...own,
      ...below,
      ...equal('same p.d.', 'V', along),
      added('currents add', 'I', flow),
      ...(hasSupply
        ? []
        : [
            relation(
              'resistances in parallel',
              'reciprocals',
              about,
              `R_${label}`,
              ...parts.map((one) => term(`R_${one.label}`)),
            ),
          ]),
    ];
  return own;
}

const every = (part: Part): readonly Part[] => [part, ...part.parts.flatMap(every)];

/** The circuit round one supply: the supply, and all that is outside it as one. */
function closed(
  ring: Part,
  isReal: (id: string) => boolean,
): { readonly roots: readonly Part[]; readonly relations: readonly Relation[] } {
  const supplies = every(ring).filter(({ kind }) => kind === 'supply');
  const [supply] = supplies;
  const rest = (ring.parts.length > 0 ? ring.parts : [ring]).filter((part) => part !== supply);
  const [first] = rest;
  if (!supply) return { roots: [ring], relations: [] };
  if (!first) {
    const short = relation(
      'e.m.f. and internal resistance',
      'product',
      ring.about,
      `E_${supply.label}`,
      term(`I_${supply.label}`),
      term(`r_${supply.label}`),
    );
    return { roots: [ring], relations: isReal(supply.label) ? [short] : [] };
  }
  const isOnly = supplies.length === 1;
  const whole = rest.length === 1 ? first : group('series', rest);
  const outside = isOnly && whole.parts.length > 0 ? { ...whole, label: 'total' } : whole;
  const B = supply.label;
  const turn = supply.sign === -1 ? 1 : -1;
  const current = (id: string, sign: Sign, about: readonly string[]): Relation =>
    relation('same current', 'sum', [B, ...about], `I_${id}`, term(`I_${B}`, times(sign, flow(supply))));
  const across = (part: Part): Relation =>
    relation(
      'same p.d.',
      'sum',
      [B, ...part.about],
      `V_${part.label}`,
      term(`V_${B}`, times(part.sign, turn)),
    );
  const branches = whole.kind === 'series' ? whole.parts : [];
  const relations = [
    ...ring.joins.map(({ id, sign }) => current(id, sign, [id])),
    ...[outside, ...branches].map((part) => current(part.label, flow(part), part.about)),
    ...[outside, ...(whole.kind === 'parallel' ? whole.parts : [])].map(across),
  ];
  if (!isOnly) return { roots: [supply, outside], relations };
  const { label, about } = outside;
  const ids = [B, ...about];
  const real = isReal(B);
  return {
    roots: [supply, outside],
    relations: [
      ...relations,
      ...(label === 'total'
        ? []
        : [
            relation('resistances in series', 'sum', about, 'R_total', term(`R_${label}`)),
            relation('same current', 'sum', ids, 'I_total', term(`I_${B}`)),
          ]),
      real
        ? relation('internal resistance in series', 'sum', ids, 'R_loop', term('R_total'), term(`r_${B}`))
        : relation('resistances in series', 'sum', about, 'R_loop', term('R_total')),
      ...(real
        ? [relation('e.m.f. round the loop', 'product', ids, `E_${B}`, term(`I_${B}`), term('R_loop'))]
        : []),
      ...(real
        ? []
        : [
            relation(
              'p.d. is current times resistance',
              'product',
              ids,
              `E_${B}`,
              term(`I_${B}`),
              term('R_total'),
            ),
          ]),
      relation('power is conserved', 'sum', ids, 'P_total', term(`Pemf_${B}`)),
      relation('power is conserved', 'sum', ids, 'P_dissipated', term('P_total')),
    ],
  };
}

/** All that holds between the quantities of a circuit; `named` are those that are given or asked. */
export function relationsOf(circuit: Circuit, named: readonly string[]): readonly Relation[] {
  const supplies = circuit.components.flatMap((one) => (one.kind === 'supply' ? [one] : []));
  const isReal = (id: string): boolean =>
    named.includes(`r_${id}`) ||
    supplies.some((one) => one.id === id && one.internalResistance !== undefined);
  const all = structure(circuit).parts.map((part) => {
    const isRing = part.from === part.to || part.kind === 'supply';
    if (isRing) return closed(part, isReal);
    const total = relation('resistances in series', 'sum', part.about, 'R_total', term(`R_${part.label}`));
    return { roots: [part], relations: circuit.terminals ? [total] : [] };
  });
  const parts = all.flatMap(({ roots }) => roots.flatMap(every));
  const point = points(circuit);
  const meters = circuit.components
    .filter(({ kind }) => kind === 'voltmeter')
    .flatMap(({ id, from, to }) => {
      const [a, b] = [point(from), point(to)];
      return parts
        .filter((part) => (part.from === a && part.to === b) || (part.from === b && part.to === a))
        .filter(({ about }) => !about.includes(id))
        .map((part) =>
          relation(
            'same p.d.',
            'sum',
            [id, ...part.about],
            `V_${id}`,
            term(`V_${part.label}`, times(part.sign, part.from === a ? 1 : -1)),
          ),
        );
    });
  const timed = named
    .filter((name) => /^[WQ]_/.test(name))
    .map((name) => {
      const id = name.slice(2);
      return name.startsWith('W')
        ? relation('energy and time', 'product', [id], name, term(`P_${id}`), term('t'))
        : relation('charge and time', 'product', [id], name, term(`I_${id}`), term('t'));
    });
  return [
    ...all.flatMap(({ roots, relations }) => [...relations, ...roots.flatMap(within)]),
    ...parts.flatMap((part) => own(part, isReal(part.label))),
    ...meters,
    ...timed,
  ];
}
