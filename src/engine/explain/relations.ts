import { isSupply, trackParts, wholesIn, type Circuit } from '../circuit/index.ts';
import { acrossParts } from './across.ts';
import { balance, bridgesOf } from './balance.ts';
import { whereNoneFlows } from './idle.ts';
import { inBlock } from './in-block.ts';
import { inJoin, inPart } from './in-part.ts';
import { inTime } from './in-time.ts';
import { inWeb } from './in-web.ts';
import { fromRating } from './rating.ts';
import { relation, term, times, type Relation, type Sign } from './relation.ts';
import { roundSupply, type Round } from './round-supply.ts';
import { sameAtOnce } from './same.ts';
import { every, flow, isDriver, isJoin, points, structure, type Part } from './structure.ts';

/** The way of the current along a tree round supplies, where they leave no doubt. */
function wayOf(roots: readonly Part[], { components }: Circuit): Sign | undefined {
  const drivers = roots.filter(isDriver);
  // A constant current flows the way that it is set, whatever drives as well.
  const deciding = drivers.some(({ kind }) => kind === 'source')
    ? drivers.filter(({ kind }) => kind === 'source')
    : drivers;
  const ways = deciding.map((one) => {
    const driver = components.find(({ id }) => id === one.label);
    const value =
      driver?.kind === 'supply' ? driver.emf : driver?.kind === 'source' ? driver.current : undefined;
    return times(flow(one), value && value.value.compare(0) < 0 ? -1 : 1);
  });
  const [way] = ways;
  return ways.every((one) => one === way) ? way : undefined;
}

/** The p.d.s round a circuit that closes on itself come to nothing. */
function around({ parts, about }: Part): readonly Relation[] {
  const [first, ...others] = parts;
  if (!first || others.length === 0) return [];
  const terms = others.map((one) => term(`V_${one.label}`, times(one.sign, first.sign === 1 ? -1 : 1)));
  return [relation('p.d.s round a loop', 'sum', about, `V_${first.label}`, ...terms)];
}

/** The same relations where some quantities go by the names of others. */
function renamed(relations: readonly Relation[], names: ReadonlyMap<string, string>): readonly Relation[] {
  const called = (name: string): string => names.get(name) ?? name;
  return relations
    .map((one) => {
      const right = one.right.map((each) => ({ ...each, name: called(each.name) }));
      return { ...one, left: called(one.left), right, ...(one.trial && { trial: called(one.trial) }) };
    })
    .filter(({ left, right }) => right.length === 0 || right.some(({ name }) => name !== left));
}

/** The resistance of a whole potentiometer, and the p.d. along it, where it is given or asked. */
function alongTracks({ components }: Circuit, named: readonly string[]): readonly Relation[] {
  return wholesIn(components).flatMap((whole) => {
    const [one, other] = trackParts(components, whole) ?? [];
    if (!one || !other) return [];
    const isAlong = other.from === one.to || other.to === one.from;
    return [['R', 1] as const, ['V', isAlong ? 1 : -1] as const]
      .filter(([letter]) => named.includes(`${letter}_${whole}`))
      .map(([letter, sign]) => {
        const parts = [term(`${letter}_${one.id}`), term(`${letter}_${other.id}`, sign)];
        return relation('whole track', 'sum', [one.id, other.id], `${letter}_${whole}`, ...parts);
      });
  });
}

/** Whether a supply has resistance inside: its line says so, or the question does. */
export const realOf =
  ({ components }: Circuit, named: readonly string[]) =>
  (id: string): boolean =>
    named.includes(`r_${id}`) ||
    components.some((one) => one.id === id && one.kind === 'supply' && one.internalResistance !== undefined);

const keyOf = ({ rule, left, right }: Relation): string =>
  [rule, left, ...right.map(({ name }) => name)].join(' ');

/**
 * All that holds between the quantities of a circuit; `named` are those that are given or asked. Of a circuit with a bridge also what holds
 * where nothing flows between its middles: that component might as well be left out.
 */
export function relationsOf(circuit: Circuit, named: readonly string[]): readonly Relation[] {
  const plain = plainRelations(circuit, named);
  const bridges = bridgesOf(circuit);
  const known = new Set(plain.map(keyOf));
  const idle = bridges
    .filter(({ shows, middle }) => shows.startsWith('I') && !isJoin(middle))
    .flatMap(({ middle, shows }) =>
      plainRelations({ ...circuit, components: circuit.components.filter((one) => one !== middle) }, named)
        .filter((one) => !known.has(keyOf(one)))
        .map((one): Relation => ({ ...one, idle: shows })),
    );
  return [...plain, ...sameAtOnce(plain, named), ...bridges.map(balance), ...idle];
}

function plainRelations(circuit: Circuit, named: readonly string[]): readonly Relation[] {
  const supplies = circuit.components.filter(isSupply);
  const isReal = realOf(circuit, named);
  const whole = structure(circuit);
  const rounds = whole.map((part): Round => {
    const plain = { roots: [part], relations: [], names: [] };
    const total = relation('resistances in series', 'sum', part.about, 'R_total', term(`R_${part.label}`));
    if (circuit.terminals) return whole.length === 1 ? { ...plain, relations: [total] } : plain;
    if (part.from !== part.to) return plain;
    return roundSupply(part, isReal) ?? { ...plain, relations: around(part) };
  });
  const idle = whereNoneFlows(circuit, isReal);
  const parts = [...rounds.flatMap(({ roots }) => roots.flatMap(every)), ...idle.parts];
  const [only] = supplies.length === 1 ? supplies : [];
  const ids = circuit.components.map(({ id }) => id);
  const totals = [
    relation(
      'power is conserved',
      'sum',
      ids,
      'P_total',
      ...supplies.map(({ id, kind }) => term(`${kind === 'supply' ? 'Pemf' : 'P'}_${id}`)),
    ),
    relation('power is conserved', 'sum', ids, 'P_dissipated', term('P_total')),
  ];
  const relations = [
    ...rounds.flatMap(({ roots, relations }) => {
      const way = !circuit.terminals ? wayOf(roots, circuit) : whole.length === 1 ? 1 : undefined;
      return [
        ...relations,
        ...roots.flatMap(inBlock),
        ...roots.flatMap(every).flatMap((part) => inPart(part, isReal(part.label), way)),
      ];
    }),
    ...idle.relations,
    ...acrossParts(circuit, parts, points(circuit), named),
    ...inWeb(circuit, circuit.terminals ? [] : whole),
    ...(supplies.length > 0 ? totals : []),
    ...circuit.components.filter(isJoin).flatMap(inJoin),
    ...circuit.components.flatMap(fromRating),
    ...inTime(named),
    ...alongTracks(circuit, named),
  ];
  const called = renamed(relations, new Map(rounds.flatMap(({ names }) => names)));
  if (!only || !named.includes('I_total')) return called;
  return [...called, relation('same current', 'sum', [only.id], 'I_total', term(`I_${only.id}`))];
}
